import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { hasMotif, motifMiddles } from "../common/join/centredMotif.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import { motifWhereQuestion } from "../common/join/motifFaults.ts";
import { sidewaysQuestion } from "../common/join/sideways.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { cutPanel } from "./development.ts";
import type { Frame } from "./frame.ts";
import { FITTING_UNKNOWN, MOST_THE_LAMP_DRAWS } from "./lampQuestions.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import { leanQuestion } from "./lean.ts";
import { mark } from "./mark.ts";
import type { LampshadeFields } from "./schema.ts";
import { seamsQuestion } from "./seamsQuestion.ts";
import { smoothWorking } from "./smoothWorking.ts";

/** More joins than this are no longer a hard shade's. */
const MOST_PANELS = 6;

/** Plans a shade whose cloth lies smooth on a backing, in as few panels as its cloth allows; null, with a diagnostic, where it cannot be cut. */
export function planSmooth(
  fields: LampshadeFields,
  frame: Frame,
  cloth: ClothFacts,
  usableWidth: Length,
  context: ItemContext,
  notes: Notes,
): LampshadePlan | null {
  const { net } = frame;
  const count = fields.count ?? 1;
  const lap = context.length("lap");
  const turn = context.length("turn");
  const railroaded = fields.railroad === true;
  const on: OnCloth = { cloth, usableWidth, railroaded };
  const edges: Edges = { lap, turn };
  const panels = panelsOf(frame, edges, on, context, notes);
  if (panels === null) return null;
  const panel = net ? cutPanel(net, panels, turn.toMm(), lap.toMm()) : null;
  const [cutWidth, cutHeight] = panelCut(frame, panels, edges, context);
  smoothWorking(fields, { ...frame, panels, cutWidth, cutHeight, lap, turn }, context, notes);
  askOfSmooth(fields, frame, panels, on, notes);
  const frontX = panel ? Length.mm(panel.middleX.toFixed(2)) : cutWidth.minus(lap).dividedBy(2);
  const motifCentred = isCentred(fields, on, cutWidth, frontX, context, notes);
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the shade?`);
  const laid = railroaded ? ([cutHeight, cutWidth] as const) : ([cutWidth, cutHeight] as const);
  const handbook = inRows(on, laid, panels * count, motifCentred, context, notes);
  return {
    ...frame,
    cloth,
    usableWidth,
    lap,
    turn,
    panel,
    panels,
    cutWidth,
    cutHeight,
    railroaded,
    motifCentred,
    frontX,
    frontAboveFoot: net ? frame.slant.dividedBy(2).plus(turn) : cutHeight.dividedBy(2),
    handbook,
    count,
    pleated: null,
  };
}

/** The cloth, and which way it runs round the shade. */
type OnCloth = Pick<LampshadePlan, "cloth" | "usableWidth" | "railroaded">;

/** The lap of a panel at one straight edge, and what is turned at both rings. */
type Edges = Pick<LampshadePlan, "lap" | "turn">;

/** The fewest panels that fit across the cloth; null, with a diagnostic, where even the most do not. */
function panelsOf(
  frame: Frame,
  edges: Edges,
  { cloth, usableWidth, railroaded }: OnCloth,
  context: ItemContext,
  notes: Notes,
): number | null {
  // Run sideways, the way round lies along the cloth and only the height must fit across.
  const fits = (panels: number): boolean => {
    const [wide, tall] = panelCut(frame, panels, edges, context);
    return !(railroaded ? tall : wide).isMoreThan(usableWidth);
  };
  for (let panels = 1; panels <= MOST_PANELS; panels += 1) if (fits(panels)) return panels;
  const { units } = context;
  const width = printLength(usableWidth, units);
  notes.diagnostics.push(
    diagnostic(
      context.place(["size"]),
      "lampshade-wider-than-cloth",
      `Even in ${MOST_PANELS} panels this shade does not fit on ${cloth.name}, which is ${width} wide.`,
      {
        actual: printSize(panelCut(frame, 1, edges, context), units),
        expected: `${width} or less across the cloth`,
        hint: "Choose a wider cloth, or a smaller shade.",
      },
    ),
  );
  return null;
}

/** What is still to be asked of a smooth shade's seams and pattern, and of its lamp. */
function askOfSmooth(
  fields: LampshadeFields,
  { net, foot }: Frame,
  panels: number,
  { cloth, railroaded }: OnCloth,
  notes: Notes,
): void {
  if (panels > 1)
    notes.questions.push(seamsQuestion(cloth, net !== null, foot, panels, railroaded));
  const sideways = railroaded ? sidewaysQuestion(cloth) : null;
  if (sideways) notes.questions.push(sideways);
  const lean = net ? leanQuestion(net, panels, cloth) : null;
  if (lean) notes.questions.push(lean);
  if (!fields.fitting) notes.questions.push(FITTING_UNKNOWN);
  notes.questions.push(MOST_THE_LAMP_DRAWS);
}

/** Whether a motif stands in its front; asked where one is wished and none has room. */
function isCentred(
  fields: LampshadeFields,
  { cloth, railroaded }: OnCloth,
  cutWidth: Length,
  frontX: Length,
  context: ItemContext,
  notes: Notes,
): boolean {
  const wanted = fields.motif !== "as-it-falls" && !railroaded && hasMotif(cloth);
  if (!wanted) return false;
  // The lap makes one side longer: on each side of the motif there must be as much cloth as that side takes.
  const right = cutWidth.minus(frontX);
  const { usableWidth, repeat } = cloth;
  const fits =
    !repeat?.across ||
    !usableWidth ||
    motifMiddles(cloth).some(
      (at) => !at.isLessThan(frontX) && !usableWidth.minus(at).isLessThan(right),
    );
  if (!fits && cloth.repeat?.across)
    notes.questions.push(motifWhereQuestion(cloth, cutWidth, "round the shade", context.units));
  return fits;
}

/** The handbook's length for so many panels in rows, each row up to whole repeats where the motif is centred. */
function inRows(
  { cloth, usableWidth }: OnCloth,
  [across, along]: readonly [Length, Length],
  pieces: number,
  motifCentred: boolean,
  context: ItemContext,
  notes: Notes,
): Length {
  const p = (length: Length) => printLength(length, context.units);
  const up = cloth.repeat && cloth.repeat.match !== "free" && motifCentred ? cloth.repeat.up : null;
  const piece = { width: across, length: up ? along.upTo(up) : along };
  const rows = handbookRows(
    Array.from({ length: pieces }, () => piece),
    usableWidth,
  );
  const handbook = rows ?? piece.length.times(pieces);
  notes.working.push({
    what: "By the handbook",
    sum: `${pieces} in rows, each row ${p(piece.length)}${up ? " (whole repeats)" : ""}`,
    result: p(handbook),
    rounded: up ? "up to whole repeats" : null,
  });
  return handbook;
}

/** Width and height of the rectangle for one panel, up to what can be marked: of a drum its share of the way round, of a cone its net. */
function panelCut(
  { net, foot, height }: Frame,
  panels: number,
  edges: Edges,
  context: ItemContext,
): [Length, Length] {
  const [lap, turn] = [edges.lap.toMm(), edges.turn.toMm()];
  const marked = (mm: number) => mark(mm, context);
  if (!net)
    return [marked((Math.PI * foot.toMm()) / panels + lap), marked(height.toMm() + 2 * turn)];
  const cut = cutPanel(net, panels, turn, lap);
  return [marked(cut.width), marked(cut.height)];
}
