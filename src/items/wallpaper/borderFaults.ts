import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { BorderAsk } from "./borderRuns.ts";

function placeOf({ n }: BorderAsk, key: string, context: ItemContext) {
  return context.place(["borders", n, key]);
}

/** Its card has no roll size. */
export function withoutRoll(ask: BorderAsk, card: ClothFacts, context: ItemContext): Diagnostic {
  return diagnostic(
    placeOf(ask, "cloth", context),
    "border-without-roll",
    `${card.name} has no roll size on its card, so no rolls of border can be counted.`,
    {
      actual: ask.border.cloth,
      expected: "a wallcovering's card with its roll",
      hint: "Write on the card, for example: roll: { width: 10 cm, length: 5 m }.",
    },
  );
}

/** At a rail, and nobody says how high that is. */
export function withoutHeight(ask: BorderAsk, context: ItemContext): Diagnostic {
  const { units } = context;
  const example = units === "inches" ? Length.inches(36) : Length.cm(90);
  return diagnostic(
    placeOf(ask, "at", context),
    "border-not-measured",
    "A border at a rail needs its height above the floor, and none is written.",
    {
      expected: "height",
      hint: `Write height: ${printLength(example, units)}, to the border's lower edge.`,
    },
  );
}

/** Below the floor or above what is papered. */
export function beyondWall(
  ask: BorderAsk,
  foot: Length,
  width: Length,
  context: ItemContext,
): Diagnostic {
  const { border, height } = ask;
  const p = (l: Length) => printLength(l, context.units);
  return diagnostic(
    placeOf(ask, border.height ? "height" : "at", context),
    "border-beyond-wall",
    `With its lower edge at ${p(foot)} a border ${p(width)} wide reaches beyond the ${p(height)} that are papered.`,
    {
      actual: p(foot),
      expected: `${p(Length.max(height.minus(width), Length.zero))} or less`,
      hint: "Write the height of the border's lower edge above the floor.",
    },
  );
}

/** A roll that is used up before the pattern meets again. */
export function noLongerThanRepeat(
  ask: BorderAsk,
  name: string,
  roll: Length,
  repeat: Length | null,
  context: ItemContext,
): Diagnostic {
  const { units } = context;
  return diagnostic(
    placeOf(ask, "cloth", context),
    "border-roll-too-short",
    `A roll of ${name} is ${printMeasured(roll, units)} long, no longer than its repeat of ${printLength(repeat ?? roll, units)}.`,
    { hint: "Check roll and repeat on its card." },
  );
}
