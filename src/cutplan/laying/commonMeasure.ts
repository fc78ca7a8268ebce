import type { CutPiece, Grains } from "../piece.ts";
import type { Plan, PlanInput, PlanResult } from "../plan.ts";

/**
 * The greatest length that goes a whole number of times into every size, repeat and residue. Some shortest plan has all its
 * places at multiples of it, so that planning in this unit loses nothing, and the same room given in inches or metres is
 * literally the same problem. Limits (band, longest length) need not be multiples: they are rounded down.
 */
export function commonMeasure({ usableWidth, pattern, pieces, options }: PlanInput): Grains {
  let measure = Math.abs(usableWidth);
  const holds = (value: number) => {
    let a = measure;
    let b = Math.abs(value);
    while (b > 0) [a, b] = [b, a % b];
    measure = a;
  };
  if (pattern) {
    holds(pattern.horizontal);
    holds(pattern.vertical);
    if (pattern.match === "half-drop") holds(Math.floor(pattern.vertical / 2));
  }
  for (const { width, height, mayTurn, across, along } of pieces) {
    holds(width);
    holds(height);
    const inRegister = across.rule === "register" || along.rule === "register";
    // Turned about its middle.
    if (mayTurn && inRegister) holds(Math.floor((width - height) / 2));
    if (across.rule === "register") holds(across.residue);
    if (across.rule === "at") across.positions.forEach(holds);
    if (along.rule === "register") holds(along.residue);
  }
  holds(options.start ?? 0);
  for (const { start, flaws } of options.lengths ?? []) {
    holds(start);
    for (const flaw of flaws) for (const value of Object.values(flaw)) holds(value);
  }
  return Math.max(1, measure);
}

/** The same problem, in units of `measure`. */
export function inMeasure(input: PlanInput, measure: Grains): PlanInput {
  const { usableWidth, pattern, pieces, options } = input;
  const of = (value: Grains) => value / measure;
  const down = (value: Grains | null | undefined) =>
    typeof value === "number" ? Math.floor(value / measure) : value;
  return {
    usableWidth: of(usableWidth),
    pattern: pattern && {
      ...pattern,
      horizontal: of(pattern.horizontal),
      vertical: of(pattern.vertical),
    },
    pieces: pieces.map((piece) => pieceIn(piece, of)),
    options: {
      ...options,
      start: typeof options.start === "number" ? of(options.start) : options.start,
      maxLength: down(options.maxLength),
      maxBandG: down(options.maxBandG),
      lengths: options.lengths?.map((each) => ({
        length: Math.floor(of(each.length)),
        start: of(each.start),
        flaws: each.flaws.map(({ x, y, width, height }) => ({
          x: of(x),
          y: of(y),
          width: of(width),
          height: of(height),
        })),
      })),
    },
  };
}

function pieceIn(piece: CutPiece, of: (value: Grains) => Grains): CutPiece {
  const { across, along } = piece;
  return {
    ...piece,
    width: of(piece.width),
    height: of(piece.height),
    across:
      across.rule === "register"
        ? { rule: "register", residue: of(across.residue) }
        : across.rule === "at"
          ? { rule: "at", positions: across.positions.map(of) }
          : across,
    along: along.rule === "register" ? { rule: "register", residue: of(along.residue) } : along,
  };
}

/** A result in units of `measure`, back in grains. */
export function inGrains(result: PlanResult, measure: Grains): PlanResult {
  const of = (value: Grains) => value * measure;
  const orNull = (value: Grains | null) => (value === null ? null : of(value));
  if (!result.ok) {
    const problems = result.problems.map((problem) => ({
      ...problem,
      widestThatWouldDo: orNull(problem.widestThatWouldDo),
    }));
    return { ok: false, problems };
  }
  const plan: Plan = {
    ok: true,
    length: of(result.length),
    lowerBound: of(result.lowerBound),
    start: of(result.start),
    starts: result.starts.map(of),
    lengths: result.lengths.map(of),
    places: result.places.map((place) => ({
      ...place,
      x: of(place.x),
      y: of(place.y),
      width: of(place.width),
      height: of(place.height),
      register: place.register && {
        x: orNull(place.register.x),
        y: orNull(place.register.y),
      },
    })),
    bands: result.bands.map(({ length, y }) => ({ length, y: of(y) })),
    itemByItem: orNull(result.itemByItem),
  };
  return plan;
}
