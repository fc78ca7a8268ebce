import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize } from "../../units/printLength.ts";
import { centredPlace, hasMotif } from "../centredMotif.ts";
import { handbookRows } from "../handbookRows.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { Notes } from "../notes.ts";
import {
  type CutPanel,
  cutPanel,
  type Development,
  developFrustum,
  sideArea,
} from "./development.ts";
import { type Pleated, planPleated } from "./pleated.ts";
import type { LampshadeFields } from "./schema.ts";

/** More joins than this are no longer a hard shade's. */
const MOST_PANELS = 6;

/** Every size that the drawing and the sheet of a lampshade need. */
export interface LampshadePlan {
  readonly form: "drum" | "cone" | "empire";
  readonly foot: Length;
  readonly top: Length;
  readonly height: Length;
  readonly slant: Length;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly lap: Length;
  readonly turn: Length;
  /** The net of a cone or an empire, millimetres; null for a drum. */
  readonly net: Development | null;
  /** One panel of that net as it is cut, millimetres; null for a drum. */
  readonly panel: CutPanel | null;
  readonly panels: number;
  /** Rectangle that one panel is cut from, up to what can be marked. */
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  readonly railroaded: boolean;
  readonly motifCentred: boolean;
  /** The middle of the front, opposite the seam, half-way up the side: from the piece's left edge and above its foot. */
  readonly frontX: Length;
  readonly frontAboveFoot: Length;
  readonly handbook: Length;
  readonly areaMm2: number;
  readonly count: number;
  /** The strip of a soft shade; null where the cloth lies smooth on a backing. */
  readonly pleated: Pleated | null;
}

/** A whole number of what a maker can mark: 1/8 in or 1 mm. */
export function mark(mm: number, context: Pick<ItemContext, "units">): Length {
  const step = context.units === "inches" ? Length.inches(new Fraction(1, 8)) : Length.mm(1);
  // Guards what binary sums leave over: a millionth of a millimetre is nothing.
  return Length.mm((mm - 1e-6).toFixed(6)).upTo(step);
}

/** Plans a lampshade; null, with a diagnostic, where it cannot be cut. */
export function planLampshade(
  fields: LampshadeFields,
  context: ItemContext,
  notes: Notes,
): LampshadePlan | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const fault = (key: string, code: string, message: string, more: object) => {
    notes.diagnostics.push(diagnostic(context.place([key]), code, message, more));
    return null;
  };
  const count = fields.count ?? 1;
  const [foot, height] = fields.size as [Length, Length];
  if (foot.isZero() || height.isZero())
    return fault("size", "lampshade-is-nothing", "A lampshade needs a diameter and a height.", {
      hint: `Write for example size: 16" x 10".`,
    });
  const form = fields.form ?? (fields.top && !fields.top.equals(foot) ? "empire" : "drum");
  const top = form === "drum" ? foot : fields.top;
  if (!top)
    return fault(
      "form",
      "lampshade-without-top",
      `A lampshade of the form ${form} needs the diameter of its top.`,
      {
        expected: "top",
        hint: `Write for example top: 8", less than the ${p(foot)} of its foot; or form: drum.`,
      },
    );
  if (form === "drum" && fields.top && !fields.top.equals(foot))
    return fault(
      "top",
      "drum-with-slope",
      `A drum is as wide at its top as at its foot, ${p(foot)}.`,
      {
        actual: fields.top.typed,
        hint: "Take the line out, or write form: empire.",
      },
    );
  if (form !== "drum" && !top.isLessThan(foot))
    return fault(
      "top",
      "lampshade-upside-down",
      `The top is ${p(top)} across, the foot ${p(foot)}: the top must be the narrower.`,
      {
        actual: top.typed,
        expected: `less than ${p(foot)}`,
        hint: "Size begins with the diameter at the foot. For upright sides write form: drum.",
      },
    );
  const cloth = context.cloth(fields.cloth);
  if (cloth && cloth.usableWidth === null)
    return fault(
      "cloth",
      "cloth-without-width",
      `${cloth.name} has no width, so it cannot be said whether this shade needs a join.`,
      {
        actual: cloth.id,
        expected: "a usable width",
        hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
      },
    );
  if (!cloth?.usableWidth) return null;
  const usableWidth = cloth.usableWidth;
  const [r, big, high] = [top.toMm() / 2, foot.toMm() / 2, height.toMm()];
  const net = form === "drum" ? null : developFrustum(r, big, high);
  const slant = Length.mm((net?.slant ?? high).toFixed(6));
  if (fields.slant) {
    const off = Math.abs(fields.slant.toMm() - slant.toMm());
    if (off > 25.4 / 4 + 1e-6)
      return fault(
        "slant",
        "slant-disagrees",
        `A ${form} ${printSize([foot, height], units)} with a top of ${p(top)} slants ${p(slant)}, not ${printMeasured(fields.slant, units)}.`,
        {
          actual: fields.slant.typed,
          expected: p(slant),
          hint: "Measure again: the height stands upright, the slant lies along the side.",
        },
      );
  }
  if (fields.style && fields.style !== "smooth") {
    const pleated = planPleated(fields, { foot, top, slant }, context, notes);
    if (!pleated) return null;
    askOfSoft(fields, context, notes);
    const { strip } = pleated;
    return {
      ...{ form, foot, top, height, slant, cloth, usableWidth, count, pleated },
      ...{ net: null, panel: null, panels: 1, lap: context.length("join"), turn: strip.top },
      cutWidth: strip.runs[0]?.joined ?? strip.flat,
      cutHeight: strip.cut,
      railroaded: strip.sideways,
      motifCentred: false,
      frontX: Length.zero,
      frontAboveFoot: Length.zero,
      handbook: strip.handbook,
      areaMm2: net ? sideArea(r, big, high) : Math.PI * foot.toMm() * high,
    };
  }
  const lap = context.length("lap");
  const turn = context.length("turn");
  const railroaded = fields.railroad === true;
  // Run sideways, the way round lies along the cloth and only the height must fit across.
  const fits = (panels: number): boolean => {
    const [wide, tall] = sizeOf(net, panels, big, high, turn.toMm(), lap.toMm());
    return !mark(railroaded ? tall : wide, context).isMoreThan(usableWidth);
  };
  let panels = 1;
  while (panels < MOST_PANELS && !fits(panels)) panels += 1;
  if (!fits(panels)) {
    const [wide, tall] = sizeOf(net, 1, big, high, turn.toMm(), lap.toMm());
    return fault(
      "size",
      "lampshade-wider-than-cloth",
      `Even in ${MOST_PANELS} panels this shade does not fit on ${cloth.name}, which is ${p(usableWidth)} wide.`,
      {
        actual: printSize([mark(wide, context), mark(tall, context)], units),
        expected: `${p(usableWidth)} or less across the cloth`,
        hint: "Choose a wider cloth, or a smaller shade.",
      },
    );
  }
  const panel = net ? cutPanel(net, panels, turn.toMm(), lap.toMm()) : null;
  const [wide, tall] = sizeOf(net, panels, big, high, turn.toMm(), lap.toMm());
  const [cutWidth, cutHeight] = [mark(wide, context), mark(tall, context)];
  working(
    fields,
    { form, foot, top, height, slant, net, panels, cutWidth, cutHeight, lap, turn },
    context,
    notes,
  );
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
  if (!fields.fitting)
    notes.questions.push(
      "How does the shade sit: on a table or floor lamp, hung, or clipped? The fitting of its ring is not known.",
    );
  notes.questions.push(
    "What is the most that the lamp may draw, and how far must cloth stay from it? The lamp's maker says both.",
  );
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
    form,
    foot,
    top,
    height,
    slant,
    cloth,
    usableWidth,
    lap,
    turn,
    net,
    panel,
    panels,
    cutWidth,
    cutHeight,
    railroaded,
    motifCentred,
    frontX,
    frontAboveFoot: net ? slant.dividedBy(2).plus(turn) : cutHeight.dividedBy(2),
    handbook,
    areaMm2: net ? sideArea(r, big, high) : Math.PI * foot.toMm() * high,
    count,
    pleated: null,
  };
}

/** What is still to be asked of a shade on a frame. */
function askOfSoft(fields: LampshadeFields, context: ItemContext, notes: Notes): void {
  if (fields.motif === "centred")
    notes.diagnostics.push(
      diagnostic(
        context.place(["motif"]),
        "pleats-hide-the-motif",
        "Pleats and gathers hide most of a motif, so none stands in the middle of this shade.",
        { severity: "warning", hint: "Take the line out, or write style: smooth." },
      ),
    );
  notes.questions.push(
    "Is the frame there, with how many struts, and is the shade lined? Neither lining nor frame tape is reckoned.",
    "What is the most that the lamp may draw, and how far must cloth stay from it? The lamp's maker says both.",
  );
  if (!fields.fitting)
    notes.questions.push(
      "How does the shade sit: on a table or floor lamp, hung, or clipped? The fitting of its ring is not known.",
    );
}

/** Width and height of the rectangle for one panel, millimetres, not rounded: of a drum its share of the way round, of a cone its net. */
function sizeOf(
  net: Development | null,
  panels: number,
  radius: number,
  height: number,
  turn: number,
  lap: number,
): [number, number] {
  if (net) {
    const cut = cutPanel(net, panels, turn, lap);
    return [cut.width, cut.height];
  }
  return [(2 * Math.PI * radius) / panels + lap, height + 2 * turn];
}

function working(
  fields: LampshadeFields,
  shade: Pick<
    LampshadePlan,
    | "form"
    | "foot"
    | "top"
    | "height"
    | "slant"
    | "net"
    | "panels"
    | "cutWidth"
    | "cutHeight"
    | "lap"
    | "turn"
  >,
  context: ItemContext,
  notes: Notes,
): void {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const mm = (value: number) => p(Length.mm(value.toFixed(4)));
  const rounded = units === "inches" ? "up to 1/8″" : "up to 1 mm";
  const { net, panels } = shade;
  if (!fields.form)
    notes.working.push({
      what: "Form",
      sum: "nothing was said",
      result: shade.form,
      rounded: null,
    });
  const parted = panels > 1 ? ` ÷ ${panels} panels` : "";
  if (!net) {
    notes.working.push(
      {
        what: "Cut, round the shade",
        sum: `π × ${p(shade.foot)}${parted} + ${p(shade.lap)} lap`,
        result: p(shade.cutWidth),
        rounded,
      },
      {
        what: "Cut, height",
        sum: `${p(shade.height)} + 2 × ${p(shade.turn)} turned over the rings`,
        result: p(shade.cutHeight),
        rounded: null,
      },
    );
    return;
  }
  const gap = shade.foot.minus(shade.top).dividedBy(2);
  notes.working.push(
    {
      what: "Slant",
      sum: `root of (${p(shade.height)}² + ${p(gap)}²)`,
      result: p(shade.slant),
      rounded: null,
    },
    {
      what: "Radius at the top",
      sum: `${p(shade.top.dividedBy(2))} × ${p(shade.slant)} ÷ ${p(gap)}`,
      result: mm(net.innerRadius),
      rounded: null,
    },
    {
      what: "Radius at the foot",
      sum: `${p(shade.foot.dividedBy(2))} × ${p(shade.slant)} ÷ ${p(gap)}`,
      result: mm(net.outerRadius),
      rounded: null,
    },
    {
      what: "Angle",
      sum: `360° × ${p(gap)} ÷ ${p(shade.slant)}${parted}`,
      result: `${(net.angleDeg / panels).toFixed(1)}°`,
      rounded: null,
    },
    {
      what: "Cut, the rectangle that holds it",
      sum: `the net with ${p(shade.lap)} lap at one straight edge and ${p(shade.turn)} turned at both curves`,
      result: printSize([shade.cutWidth, shade.cutHeight], units),
      rounded,
    },
  );
}
