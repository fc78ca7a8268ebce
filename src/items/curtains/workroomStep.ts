import { Length } from "../../units/length.ts";
import type { ItemContext } from "../itemKind.ts";

/** What a workroom can mark: rods and blinds between walls go down to it. */
export function workroomStep(context: ItemContext): Length {
  return context.units === "inches" ? Length.inches("1/8") : Length.mm(1);
}
