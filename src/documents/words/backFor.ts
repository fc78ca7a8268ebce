import type { Receipt } from "../../quantities/arrival/returned.ts";

/** For what a length went back to its supplier. */
export function backFor(returned: Receipt["returned"]): string {
  return returned?.for === "credit" ? "for credit" : "for a replacement";
}
