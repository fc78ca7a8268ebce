import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ItemContext } from "../itemKind.ts";

/** Where a drop and `to` are both written, and only the drop counts: a warning at `to`. */
export function dropAndTo(context: ItemContext): Diagnostic {
  return diagnostic(
    context.place(["to"]),
    "drop-and-to",
    "Both drop and to are written; the drop counts.",
    { severity: "warning", hint: "Take one of the two lines out." },
  );
}
