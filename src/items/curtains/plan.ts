import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import {
  centredAcross,
  centredPlace,
  hasMotif,
  wholeRepeats,
} from "../common/join/centredMotif.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { type HandbookCut, handbookCut, selvedgeMatch } from "../common/join/selvedgeMatch.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { type Coverage, coverageOf } from "./coverage.ts";
import { type PlainCut, plainCut } from "./cutLength.ts";
import { type HeadingPlan, planHeading } from "./headingPlan.ts";
import { type LayerPlan, planLayer } from "./liningPlan.ts";
import { type Hung, measureCurtains } from "./measure.ts";
import type { Panel } from "./panel.ts";
import type { TabHeading } from "./poleHeadings.ts";
import type { CurtainsFields } from "./schema.ts";
import { joinedWidth, leastWidths, widthsText } from "./widths.ts";

/** Every size that the drawing and the sheet of curtains need. */
export interface CurtainsPlan {
  readonly hung: Hung;
  readonly coverage: Coverage;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly join: Length;
  readonly widthsEach: Fraction;
  readonly widthsInAll: Fraction;
  readonly railroaded: boolean;
  readonly panel: Panel;
  readonly heading: HeadingPlan;
  /** Cut off at the return side of each curtain after joining: an s-fold is exactly as wide as its carriers ask. */
  readonly trimmed: Length;
  /** Tabs with the same part of the pattern in their middle. */
  readonly tabsAlike: boolean;
  readonly cut: PlainCut;
  readonly handbook: HandbookCut;
  /** True where neighbouring widths hang half a repeat lower. */
  readonly shifts: boolean;
  readonly lowestMotif: Length | null;
  readonly fullnessReached: Fraction;
  /** One curtain drawn back. */
  readonly stackEach: Length;
  readonly layers: readonly LayerPlan[];
  readonly count: number;
}

/** Plans curtains from their fields; null, with a diagnostic, where something essential is not known. */
export function planCurtains(
  fields: CurtainsFields,
  context: ItemContext,
  notes: Notes,
): CurtainsPlan | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const cloth = context.cloth(fields.cloth);
  const hung = measureCurtains(fields, context, notes);
  const usableWidth = clothWidth(
    cloth,
    "cloth",
    "the widths of these curtains cannot be counted",
    context,
    notes,
  );
  if (cloth === null || usableWidth === null || hung === null) return null;
  const coverage = coverageOf(fields, hung.pole, context, notes);
  const cut = plainCut(fields, hung.drop, context, notes);
  const join = context.length("join");
  const railroaded = fields.railroad === true;
  const flatEach = coverage.flat.dividedBy(coverage.curtains);
  const halves = coverage.curtains === 2 && fields["half-widths"] !== false;

  let widthsEach: Fraction;
  let joinedEach: Length;
  if (railroaded) {
    if (cut.length.isMoreThan(usableWidth)) {
      notes.diagnostics.push(
        diagnostic(
          context.place(["railroad"]),
          "railroad-too-long",
          `Cut ${p(cut.length)} long, these curtains do not fit across ${cloth.name}, which is ${p(usableWidth)} wide.`,
          {
            actual: "yes",
            expected: `a cut of ${p(usableWidth)} or less`,
            hint: "Take the railroad line out, or choose a wider cloth.",
          },
        ),
      );
      return null;
    }
    widthsEach = new Fraction(1);
    joinedEach = flatEach;
    notes.working.push({
      what: "Length a curtain, cloth run sideways",
      sum: `${p(coverage.flat)} ÷ ${coverage.curtains}`,
      result: p(flatEach),
      rounded: null,
    });
    if (cloth.repeat !== null || cloth.nap)
      notes.questions.push(
        `May ${cloth.name} be run sideways, with its pattern and pile turned a quarter?`,
      );
  } else {
    const least = leastWidths(flatEach, usableWidth, join, halves);
    if (least === null) {
      narrowerThanJoins(cloth, usableWidth, join, context, notes);
      return null;
    }
    widthsEach = least;
    joinedEach = joinedWidth(least, usableWidth, join);
    const joins = least.ceil().sub(1);
    const joinsText =
      joins.compare(0) === 0
        ? ""
        : ` − ${joins.toFraction()} ${joins.compare(1) === 0 ? "join" : "joins"} × 2 × ${p(join)}`;
    const inAll = least.mul(coverage.curtains);
    notes.working.push({
      what: "Widths",
      sum: `${coverage.curtains === 2 ? `${p(coverage.flat)} ÷ 2 = ` : ""}${p(flatEach)} a curtain; ${widthsText(least)} × ${p(usableWidth)}${joinsText} = ${p(joinedEach)}`,
      result:
        coverage.curtains === 2
          ? `${widthsText(least)} a curtain, ${widthsText(inAll)} in all`
          : widthsText(least),
      rounded: halves ? "up to the half width" : "up to the whole width",
    });
  }
  const widthsInAll = widthsEach.mul(coverage.curtains);

  const match = railroaded ? { shifts: false, question: null } : selvedgeMatch(cloth);
  if (match.question !== null && widthsEach.compare(1) > 0) notes.questions.push(match.question);
  const repeatUp =
    cloth.repeat && cloth.repeat.match !== "free" && !railroaded ? cloth.repeat.up : null;
  const cutsEach = widthsInAll.ceil().valueOf();
  const handbook = railroaded
    ? { cutLength: cut.length, repeats: null, total: coverage.flat.times(count) }
    : handbookCut(cut.length, cutsEach * count, repeatUp, match.shifts);
  if (repeatUp && handbook.repeats !== null) {
    notes.working.push({
      what: "Cut length, with its repeat",
      sum: `${p(cut.length)} ÷ ${p(repeatUp)} repeat = ${cut.length.over(repeatUp).valueOf().toFixed(2)}; ${handbook.repeats} × ${p(repeatUp)}`,
      result: p(handbook.cutLength),
      rounded: "up to whole repeats",
    });
  }
  const drops = match.shifts && repeatUp ? Math.floor((cutsEach * count) / 2) : 0;
  notes.working.push({
    what: "By the handbook",
    sum: railroaded
      ? `${count} × ${p(coverage.flat)}`
      : `${cutsEach * count} × ${p(handbook.cutLength)}${drops > 0 && repeatUp ? ` + ${drops} × ${p(repeatUp.dividedBy(2))} for the half-drop` : ""}`,
    result: p(handbook.total),
    rounded: null,
  });

  const joinedFlat = joinedEach.minus(coverage.sideHem.times(2));
  const flat = coverage.sFold?.flat ?? joinedFlat;
  const overlapEach = coverage.curtains === 2 ? coverage.overlap.dividedBy(2) : coverage.overlap;
  const finished = coverage.coverage.dividedBy(coverage.curtains);
  const returns = coverage.returnEach.times(coverage.curtains === 2 ? 1 : 2);
  const panel: Panel = { flat, finished, face: finished.minus(returns).minus(overlapEach) };
  if (!coverage.sFold)
    notes.working.push({
      what: "Flat panel, hemmed",
      sum: `${p(joinedEach)} − 2 × ${p(coverage.sideHem)} side hems`,
      result: p(flat),
      rounded: null,
    });
  if (coverage.curtains === 2)
    notes.working.push({
      what: "Finished, a curtain",
      sum: `${p(coverage.coverage)} coverage ÷ 2`,
      result: p(finished),
      rounded: null,
    });
  const ends = [
    ...(returns.isZero() ? [] : [` − ${p(returns)} return`]),
    ...(overlapEach.isZero() ? [] : [` − ${p(overlapEach)} overlap`]),
  ];
  if (ends.length > 0)
    notes.working.push({
      what: "Face of a curtain",
      sum: `${p(finished)} finished${ends.join("")}`,
      result: p(panel.face),
      rounded: null,
    });
  const heading = planHeading(fields, panel, coverage.sFold, context, notes);
  if (fields.pleats && fields.heading !== "pinch-pleat" && fields.heading !== "goblet") {
    notes.diagnostics.push(
      diagnostic(
        context.place(["pleats"]),
        "pleats-of-no-pleat",
        "A number of pleats is written, but this heading has none that are counted.",
        {
          severity: "warning",
          actual: String(fields.pleats),
          hint: "Take the line out, or write heading: pinch-pleat or goblet.",
        },
      ),
    );
  }
  const tabsAlike = areTabsAlike(fields, heading, cloth, context, notes);
  const tabRows =
    heading.heading === "tab"
      ? tabsLength(heading, coverage.curtains * count, usableWidth, tabsAlike ? cloth : null)
      : Length.zero;
  if (!tabRows.isZero()) {
    notes.working.push({
      what: "By the handbook, tabs in rows",
      sum: `${p(heading.heading === "tab" ? heading.stripLength : tabRows)} a row across ${p(usableWidth)}${tabsAlike ? ", each with a motif in its middle" : ""}`,
      result: p(tabRows),
      rounded: "up to whole rows",
    });
  }
  const fullnessReached = flat.over(finished);

  const lowestMotif = fields["lowest-motif"] ?? null;
  if (repeatUp && lowestMotif === null) {
    notes.questions.push(
      "How high above the hem does the middle of the lowest whole motif stand? Level across all widths is all that is known.",
    );
  }
  if (repeatUp && lowestMotif && !lowestMotif.isLessThan(repeatUp)) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["lowest-motif"]),
        "lowest-motif-is-not",
        `At ${p(lowestMotif)} above the hem a whole repeat of ${p(repeatUp)} hangs below this motif, so another one is lower.`,
        {
          severity: "warning",
          actual: lowestMotif.typed,
          expected: `less than ${p(repeatUp)}`,
          hint: "Take a whole repeat off.",
        },
      ),
    );
  }
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the curtain?`);

  if (fields.blackout && coverage.returnEach.isZero())
    notes.questions.push(
      "These curtains do not return to the wall: light passes at both sides of the blackout. Is that wanted?",
    );
  const stack = fields["stack-back"] ?? hung.pole.times(context.ratio("stack"));
  const layers: LayerPlan[] = [];
  for (const each of ["interlining", "blackout", "lining"] as const) {
    const id = fields[each];
    const facts = id ? context.cloth(id) : null;
    if (!facts) continue;
    const layer = planLayer(
      {
        layer: each,
        cloth: facts,
        panelFlat: flat,
        drop: hung.drop,
        join,
        halves,
        curtains: coverage.curtains,
        count,
        face: { up: repeatUp, lowestMotif },
        atDoor: context.window?.isDoor === true,
      },
      context,
      notes,
    );
    if (layer) layers.push(layer);
  }
  return {
    hung,
    coverage,
    cloth,
    usableWidth,
    join,
    widthsEach,
    widthsInAll,
    railroaded,
    panel,
    heading,
    tabsAlike,
    trimmed: joinedFlat.minus(flat),
    cut,
    handbook: { ...handbook, total: handbook.total.plus(tabRows) },
    shifts: match.shifts,
    lowestMotif,
    fullnessReached,
    stackEach: stack.dividedBy(coverage.curtains),
    layers,
    count,
  };
}

/** Whether tabs are cut alike; asked where the cloth has a pattern and nothing is said, refused where no motif has room. */
function areTabsAlike(
  fields: CurtainsFields,
  heading: HeadingPlan,
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
): boolean {
  const said = fields["tab-match"];
  if (heading.heading !== "tab") {
    if (said)
      notes.diagnostics.push(
        diagnostic(context.place(["tab-match"]), "tabs-of-no-tab", "This heading has no tabs.", {
          severity: "warning",
          hint: "Take the line out, or write heading: tab.",
        }),
      );
    return false;
  }
  if (!hasMotif(cloth)) return false;
  if (!said)
    notes.questions.push(
      `Are the tabs of ${cloth.name} to be all alike, a motif in the middle of each? As the pattern falls is assumed, which takes less cloth.`,
    );
  if (said !== "alike") return false;
  const place = centredPlace(cloth, heading.stripWidth, heading.stripLength);
  if (place.fits) return true;
  notes.diagnostics.push(
    diagnostic(
      context.place(["tab-match"]),
      "tab-motif-no-room",
      `No motif of ${cloth.name} can stand in the middle of a strip ${printLength(heading.stripWidth, context.units)} wide.`,
      {
        actual: said,
        hint: "Write tab-match: as-it-falls, or make the tabs narrower (allowance tab-width).",
      },
    ),
  );
  return false;
}

/** The length of rows that hold every tab side by side across the cloth; rows go up, alike ones to whole repeats. */
function tabsLength(
  heading: TabHeading,
  curtains: number,
  usableWidth: Length,
  alike: ClothFacts | null,
): Length {
  const across = alike
    ? Math.max(1, centredAcross(alike, heading.stripWidth))
    : Math.max(1, usableWidth.over(heading.stripWidth).floor().valueOf());
  const up = alike?.repeat && alike.repeat.match !== "free" ? alike.repeat.up : null;
  return wholeRepeats(heading.stripLength, up).times(Math.ceil((heading.tabs * curtains) / across));
}
