import { foldCloth } from "../../drawing/foldGeometry.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import { pencilPleats, pinchPleat } from "../common/skirt/pleatShapes.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import {
  eyeletGaps,
  FINIAL_RADIUS,
  goblet,
  pole,
  RING,
  ring,
  slotGathers,
  tab,
  track,
} from "./headingShapes.ts";
import { onTrack } from "./onTrack.ts";
import type { CurtainsMade } from "./pieces.ts";
import type { CurtainsPlan } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** Drawn back, folds lie close; what is seen of them is about this full (print design 8). */
const SEEN_FULLNESS = 2.2;
/** Narrower folds than this cannot be told apart on a board; fewer are drawn. */
const LEAST_PITCH = 78;

/** What a tie-back leaves of a stack's width (common practice, no source). */
const HELD_SHARE = 0.6;

/** The drawn-back stacks from the left edge of the elevation, and the width that a tie-back holds them in to; millimetres. */
export function curtainStacks(
  plan: CurtainsPlan,
): readonly { readonly middle: number; readonly heldWidth: number }[] {
  const frame = curtainsFrame(plan);
  const stack = Math.min(
    plan.stackEach.toMm(),
    (frame.right - frame.left) / plan.coverage.curtains,
  );
  const middles =
    plan.coverage.hangs === "pair"
      ? [frame.left + stack / 2, frame.right - stack / 2]
      : [plan.coverage.hangs === "left" ? frame.left + stack / 2 : frame.right - stack / 2];
  return middles.map((middle) => ({ middle, heldWidth: stack * HELD_SHARE }));
}

/** Where things of the elevation lie, in millimetres from its upper left corner. */
export interface CurtainsFrame {
  readonly left: number;
  readonly right: number;
  readonly poleY: number;
  readonly headY: number;
  readonly hemY: number;
}

/** The box: pole and finials wide, from above the rings to the hem. `above` leaves room for words. */
export function curtainsFrame(plan: CurtainsPlan, above = 0): CurtainsFrame {
  const beyond = FINIAL_RADIUS * 1.8 + 2;
  const poleY = above + RING.ry + 4;
  const lead = plan.hung.headBelowPole.toMm();
  const lift = Math.max(0, -lead - poleY + above);
  const headY = poleY + lift + lead;
  return {
    left: beyond,
    right: beyond + plan.hung.pole.toMm(),
    poleY: poleY + lift,
    headY,
    hemY: headY + plan.hung.drop.toMm(),
  };
}

/** Curtains drawn back at their stack, in folds, as they are seen by day, or drawn together; the box's foot is the hem. */
export function curtainsElevation(
  fields: CurtainsFields,
  made: CurtainsMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const frame = curtainsFrame(plan);
  const inside = onTrack(fields);
  const together = context.look?.drawnTogether === true;
  const whole = (frame.right - frame.left) / plan.coverage.curtains;
  const stack = together ? whole : Math.min(plan.stackEach.toMm(), whole);
  const fullness = together ? plan.fullnessReached.valueOf() : SEEN_FULLNESS;
  const lefts =
    plan.coverage.hangs === "pair"
      ? [frame.left, frame.right - stack]
      : [plan.coverage.hangs === "left" ? frame.left : frame.right - stack];
  const hardware = inside
    ? track(frame.left, frame.right, frame.poleY)
    : pole(frame.left, frame.right, frame.poleY);
  const shapes: Shape[] = [...hardware];
  const held = context.look?.heldAboveFloorMm;
  const waistY = held === undefined ? null : frame.hemY + plan.hung.hemHeight.toMm() - held;
  const place = { frame, width: stack, fullness, inside, waistY };
  for (const left of lefts) shapes.push(...curtain(plan, left, place));
  const drop = printLength(plan.hung.drop, context.units);
  const word = plan.coverage.curtains === 2 ? "A pair of curtains" : "One curtain";
  return {
    widthMm: frame.right + frame.left,
    heightMm: frame.hemY,
    shapes,
    dimensions: [],
    title: fields.curtains,
    description: `${word} of ${plan.cloth.name}, drawn ${together ? "together" : "back"}, ${drop} long.`,
  };
}

/** How the curtains of one elevation are drawn: millimetres; `waistY` is where a tie-back holds them. */
interface CurtainPlace {
  readonly frame: CurtainsFrame;
  readonly width: number;
  readonly fullness: number;
  readonly inside: boolean;
  readonly waistY: number | null;
}

function curtain(plan: CurtainsPlan, left: number, place: CurtainPlace): Shape[] {
  const { frame, width, inside, waistY } = place;
  const { heading } = plan;
  const depth = heading.depth.toMm();
  const wanted =
    heading.heading === "pinch-pleat" || heading.heading === "goblet"
      ? heading.pleats
      : heading.heading === "eyelet"
        ? heading.eyelets / 2
        : heading.heading === "s-fold"
          ? heading.carriers / 2
          : heading.heading === "tab"
            ? heading.tabs
            : Math.round(width / 90);
  const folds = Math.max(2, Math.min(Math.ceil(wanted), Math.floor(width / LEAST_PITCH)));
  const flatWidth = width * place.fullness;
  const { repeat } = plan.cloth;
  const up = repeat?.up.toMm() ?? 0;
  const lowest = plan.lowestMotif?.toMm() ?? up / 2;
  // Every curtain begins at the same point of the repeat; a pair is not mirrored.
  const originX = repeat?.fromSelvedge?.toMm() ?? (repeat?.across?.toMm() ?? width) / 2;
  const shapes: Shape[] = [
    {
      shape: "folds",
      surface: "face",
      x: left,
      y: frame.headY,
      width,
      height: frame.hemY - frame.headY,
      flatWidth,
      pleats: folds,
      originX: originX - plan.coverage.sideHem.toMm(),
      originY: frame.hemY - lowest,
      hem: "wavy",
      ...(waistY !== null && waistY > frame.headY && waistY < frame.hemY
        ? { waist: { y: waistY, width: width * HELD_SHARE } }
        : {}),
    },
  ];
  const { edges } = foldCloth(left, width, flatWidth, folds);
  if (heading.heading === "pencil-pleat") {
    shapes.push(...pencilPleats(left, width, frame.headY, depth));
    return shapes;
  }
  if (heading.heading === "eyelet") {
    shapes.push(...eyeletGaps(edges, frame.poleY));
    return shapes;
  }
  if (heading.heading === "slot") {
    shapes.push(...slotGathers(left, width, frame.headY, heading.frill.toMm(), depth));
    return shapes;
  }
  // Nothing of an s-fold's heading is seen from the front: its tape is behind, its carriers in the track.
  if (heading.heading === "s-fold") return shapes;
  for (const [fold, from] of edges.slice(0, -1).entries()) {
    const to = edges[fold + 1] as number;
    const middle = (from + to) / 2;
    if (heading.heading === "tab") {
      const wide = Math.min(heading.tabWidth.toMm(), (to - from) * 0.6);
      // Alike, a motif stands in each; else each strip came from its own place across the cloth.
      const across = plan.tabsAlike ? 0 : fold * heading.stripWidth.toMm();
      const high = plan.tabsAlike ? (frame.headY + frame.poleY) / 2 : frame.hemY - lowest;
      const origin = { x: middle + across, y: high };
      shapes.push(...tab(middle, wide, frame.headY, frame.poleY, origin));
      continue;
    }
    if (heading.heading === "goblet") {
      shapes.push(...goblet(middle, frame.headY, depth, (to - from) * 0.34));
      if (!inside) shapes.push(ring(middle, frame.poleY));
      continue;
    }
    shapes.push(...pinchPleat(middle, frame.headY, depth, (to - from) * 0.42));
    if (!inside) shapes.push(ring(middle, frame.poleY));
  }
  return shapes;
}
