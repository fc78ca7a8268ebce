import type { SeatMade } from "../seatMade.ts";

/**
 * Where the parts of a chair stand as it is seen from the front and from its left side, in millimetres, y down from its top. Only
 * the overall size and the seat's height are measured; the rest follows usual proportions (common practice, no source).
 */
export interface ChairShape {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly arm: number;
  readonly roll: number;
  readonly armTop: number;
  readonly legTop: number;
  readonly seatTop: number;
  readonly seatFoot: number;
  readonly backInset: number;
  /** Cushions side by side on the seat, and whether as many stand before the back. */
  readonly seats: number;
  readonly backCushions: boolean;
  readonly wing: boolean;
  readonly skirt: boolean;
  /** Its frame shows and its arms are bare: measured, and no arm among the pieces. */
  readonly open: boolean;
  /** Of an open frame: whether it has arms, and whether its back is upholstered. */
  readonly arms: boolean;
  readonly padBack: boolean;
}

export function chairShape(made: SeatMade, type: string | undefined): ChairShape {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  const has = (piece: string) => made.pieces.some((p) => p.piece === piece);
  const seat = Math.min(made.seatHeight.toMm(), height * 0.62);
  const slim = type === "occasional";
  const arm = Math.min(Math.max(width * (slim ? 0.12 : 0.165), 60), 160);
  const legHigh = Math.min(Math.max(height * 0.13, 60), 150, seat * 0.4);
  const armHigh = Math.min(seat + 175, height * 0.8);
  const seatTop = height - seat;
  return {
    width,
    depth,
    height,
    arm,
    roll: arm * 0.5,
    armTop: height - armHigh,
    legTop: height - legHigh,
    seatTop,
    seatFoot: seatTop + Math.min(150, (height - legHigh - seatTop) * 0.52),
    backInset: arm * 0.38,
    seats: made.seats,
    backCushions: has("back-cushion-front"),
    wing: type === "wing" || has("wing-inside") || has("wing-outside"),
    skirt: has("skirt"),
    arms: made.arms,
    padBack: made.padBack,
    open: made.job.thing === "dining chair" || openAsMeasured(made, has),
  };
}

const CLOSED = ["inside-arm", "outside-arm", "arm-front", "wing-inside", "wing-outside", "skirt"];

/** Of an armchair: measured, and neither arm nor skirt among its pieces. */
function openAsMeasured(made: SeatMade, has: (piece: string) => boolean): boolean {
  return made.seats === 1 && made.pieces.length > 0 && !CLOSED.some(has);
}
