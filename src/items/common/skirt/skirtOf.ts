import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut } from "../../itemKind.ts";
import { hasMotif } from "../join/centredMotif.ts";
import { matchedTurning } from "../join/matchedTurning.ts";
import { handbookCut, selvedgeMatch } from "../join/selvedgeMatch.ts";
import { sidewaysQuestion } from "../join/sideways.ts";
import type { Notes } from "../notes.ts";
import { inStrips, inWidths } from "./runCuts.ts";
import { layOf, type SkirtLay } from "./skirtLay.ts";
import type { Skirt, SkirtAsk } from "./skirtRun.ts";
import { sideBySide } from "./stripLengths.ts";

/**
 * A gathered, pleated or tailored skirt. Flat = run x fullness + corner pleats + ends; widths the least number whose joined width
 * (widths x usable width - 2 x turning for each join) reaches it; cut = drop + hem + top turning, level all round. Run sideways it
 * is cut in strips along the cloth (`inStrips`). Null, with a diagnostic, where it cannot be cut.
 */
export function skirtOf(asked: SkirtAsk, context: ItemContext, notes: Notes): Skirt | null {
  const cloth = context.cloth(asked.cloth);
  const lay = cloth && layOf(asked, cloth, context, notes);
  if (!lay) return null;
  const ask = lay.sideways ? asked : { ...asked, join: matchedTurning(cloth, asked.join) };
  const { cut, sideways, words } = lay;
  const made = ask.runs.map((run) =>
    sideways ? inStrips(ask, lay, run, context, notes) : inWidths(ask, lay, run, context, notes),
  );
  const runs = made.map((each) => each.run);
  const cuts = made.flatMap((each) => each.cuts);
  const { question } = selvedgeMatch(lay.cloth);
  if (runs.some((r) => r.widths > 1) && question && !sideways) notes.questions.push(question);
  if (sideways && hasMotif(lay.cloth)) {
    notes.questions.push(sidewaysQuestion(lay.cloth) as string);
    if (runs.some((r) => r.widths > 1))
      notes.questions.push(
        `Run sideways, the strips of ${lay.cloth.name} are level with each other, and the pattern breaks off where two are joined: is that so wished?`,
      );
  }
  const sum = { what: "Cut", sum: lay.because, result: printLength(cut, context.units) };
  notes.working.push({ ...sum, rounded: null });
  const widths = runs.reduce((n, r) => n + r.widths, 0) * ask.count;
  const handbook = handbookOf(lay, cuts, widths, context, notes);
  if (lay.cloth.nap && !sideways)
    notes.questions.push(`Does the pile of ${lay.cloth.name} run up or down the ${words.piece}?`);
  return {
    cloth: lay.cloth,
    usableWidth: lay.usable,
    style: ask.style,
    fullness: lay.fullness,
    drop: ask.drop,
    cut,
    hem: ask.hem,
    top: ask.top,
    runs,
    sideways,
    cuts,
    widths,
    finishedRun: Length.sum(ask.runs.map((r) => r.length)),
    flat: Length.sum(runs.map((r) => r.flat)),
    handbook,
  };
}

/** Widths each up to whole repeats; of cloth run sideways the strips side by side. */
function handbookOf(
  lay: SkirtLay,
  cuts: readonly ItemCut[],
  widths: number,
  context: ItemContext,
  notes: Notes,
): Length {
  const p = (l: Length) => printLength(l, context.units);
  const { across, cut, repeatUp, sideways } = lay;
  const handbook = sideways
    ? sideBySide(
        cuts.flatMap((c) => Array.from({ length: c.count }, () => c.height)),
        across,
      )
    : handbookCut(cut, widths, repeatUp, lay.shifts).total;
  notes.working.push({
    what: "By the handbook",
    sum: sideways
      ? `strips side by side, ${across} across the cloth`
      : `${widths} × ${p(repeatUp ? cut.upTo(repeatUp) : cut)}`,
    result: p(handbook),
    rounded: repeatUp && !sideways ? "each up to whole repeats" : null,
  });
  return handbook;
}
