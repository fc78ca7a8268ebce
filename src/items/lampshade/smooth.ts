import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { cutPanel } from "./development.ts";
import type { Frame } from "./frame.ts";
import { FITTING_UNKNOWN, MOST_THE_LAMP_DRAWS } from "./lampQuestions.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import { mark } from "./mark.ts";
import type { LampshadeFields } from "./schema.ts";
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
  const { units } = context;
  const { net } = frame;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const lap = context.length("lap");
  const turn = context.length("turn");
  const railroaded = fields.railroad === true;
  // Run sideways, the way round lies along the cloth and only the height must fit across.
  const fits = (panels: number): boolean => {
    const [wide, tall] = panelSize(frame, panels, turn.toMm(), lap.toMm());
    return !mark(railroaded ? tall : wide, context).isMoreThan(usableWidth);
  };
  let panels = 1;
  while (panels < MOST_PANELS && !fits(panels)) panels += 1;
  if (!fits(panels)) {
    const [wide, tall] = panelSize(frame, 1, turn.toMm(), lap.toMm());
    notes.diagnostics.push(
      diagnostic(
        context.place(["size"]),
        "lampshade-wider-than-cloth",
        `Even in ${MOST_PANELS} panels this shade does not fit on ${cloth.name}, which is ${p(usableWidth)} wide.`,
        {
          actual: printSize([mark(wide, context), mark(tall, context)], units),
          expected: `${p(usableWidth)} or less across the cloth`,
          hint: "Choose a wider cloth, or a smaller shade.",
        },
      ),
    );
    return null;
  }
  const panel = net ? cutPanel(net, panels, turn.toMm(), lap.toMm()) : null;
  const [wide, tall] = panelSize(frame, panels, turn.toMm(), lap.toMm());
  const [cutWidth, cutHeight] = [mark(wide, context), mark(tall, context)];
  smoothWorking(fields, { ...frame, panels, cutWidth, cutHeight, lap, turn }, context, notes);
  if (panels > 1) {
    notes.questions.push(
      `The shade is wider than ${cloth.name} and has ${panels} seams, spread evenly round it: may they show, or may the cloth be run sideways (railroad: yes)?`,
    );
  }
  if (railroaded && (cloth.repeat !== null || cloth.nap))
    notes.questions.push(
      `May ${cloth.name} be run sideways, with its pattern and pile turned a quarter?`,
    );
  if (net && cloth.repeat)
    notes.questions.push(
      `On sloping sides the pattern of ${cloth.name} stands upright only opposite the seam and leans towards it on both sides: is that wanted?`,
    );
  if (!fields.fitting) notes.questions.push(FITTING_UNKNOWN);
  notes.questions.push(MOST_THE_LAMP_DRAWS);
  const wanted = fields.motif !== "as-it-falls" && !railroaded && hasMotif(cloth);
  const frontX = panel ? Length.mm(panel.middleX.toFixed(2)) : cutWidth.minus(lap).dividedBy(2);
  // The lap makes one side longer: the motif must have that much cloth on its longer side.
  const longer = Length.max(frontX, cutWidth.minus(frontX));
  const motifCentred = wanted && centredPlace(cloth, longer.times(2), cutHeight).fits;
  if (wanted && !motifCentred && cloth.repeat?.across)
    notes.questions.push(
      `No motif of ${cloth.name} can stand in the middle of a piece ${p(cutWidth)} wide: where round the shade is the motif wanted?`,
    );
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the shade?`);
  const across = railroaded ? cutHeight : cutWidth;
  const along = railroaded ? cutWidth : cutHeight;
  const up = cloth.repeat && cloth.repeat.match !== "free" && motifCentred ? cloth.repeat.up : null;
  const piece = { width: across, length: up ? along.upTo(up) : along };
  const handbook =
    handbookRows(
      Array.from({ length: panels * count }, () => piece),
      usableWidth,
    ) ?? piece.length.times(panels * count);
  notes.working.push({
    what: "By the handbook",
    sum: `${panels * count} in rows, each row ${p(piece.length)}${up ? " (whole repeats)" : ""}`,
    result: p(handbook),
    rounded: up ? "up to whole repeats" : null,
  });
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

/** Width and height of the rectangle for one panel, millimetres, not rounded: of a drum its share of the way round, of a cone its net. */
function panelSize(
  { net, foot, height }: Frame,
  panels: number,
  turn: number,
  lap: number,
): [number, number] {
  if (net) {
    const cut = cutPanel(net, panels, turn, lap);
    return [cut.width, cut.height];
  }
  return [(Math.PI * foot.toMm()) / panels + lap, height.toMm() + 2 * turn];
}
