import type { Crossing } from "./crossing.ts";
import type { JudgedKind, KindSigns } from "./judgedKind.ts";

/** Limits of a check, tried on photographs of made cloths. */
const LIMITS = {
  /** Share of the variance that is a sum of warp and weft, or a chequer, and how even both must be. */
  sum: 0.875,
  product: 0.82,
  balance: 0.08,
  /** Of opaque bands the sum is less, and the product of both makes up for the rest: where warp lies over weft one hides the other. */
  opaqueSum: 0.82,
  woven: 0.975,
  /** Figure and ground of a chequer are alike: where one colour covers more than this the squares are spots. */
  spotted: 0.62,
  /** Under this nearly all bands run one way: it may be a stripe with figures. */
  oneWay: 0.15,
  /** Agreement one repeat further under which no kind is sure that rests on what comes again. */
  chance: 0.75,
  /**
   * Even bands of two yarns, both ways, in a twill: half of the variance is a sum, and the rest four equal products, or less of the rest
   * where the picture is soft. So the sum and four times the product make up all, within `twill`; its edges lean one way by `slant`; and
   * from afar, its twill gone, it is a gingham by `afar`, which triangles that lean are not.
   */
  even: 0.54,
  evenBalance: 0.85,
  evenGround: 0.6,
  twill: 0.15,
  slant: 0.15,
  afar: 0.95,
  /**
   * A glen check: figure and ground alike as fine as threads, so that a line as long as its cell's side goes from one to the other
   * `changes` times, and from afar bands both ways. A fret or a key has five changes, dense foliage twelve, and no bands.
   */
  glen: { sum: 0.58, balance: 0.55, afar: 0.85, changes: 16 },
  /** On the bias bands that cross are a check by this sum of both; where one colour covers more than the second they are a trellis. */
  biasSum: 0.9,
  trellis: 0.6,
  /** A check that is as fine as a weave is one from this size of its cell on, in millimetres. */
  fineCellMm: 4,
};

/** Nearer to one of its limits than this part of what is left to one, a check is a guess. */
const NEAR = 0.15;

/** True where a part of one is over a limit, and not just so. */
function isWellOver(part: number, limit: number): boolean {
  return 1 - part < (1 - NEAR) * (1 - limit);
}

/** A check, or null where the bands up and across do not make up the pattern. Those on the bias are not asked for. */
export function checkOf(signs: KindSigns): JudgedKind | null {
  const { crossing, cellMm } = signs;
  const squares = crossing.product > LIMITS.product && signs.groundShare < LIMITS.spotted;
  const houndstooth = isHoundstooth(signs);
  const glen = isGlen(signs);
  if (!isBanded(crossing) && !squares && !houndstooth && !glen) return null;
  // A repeat that may come again by chance bears out no kind.
  const repeats = cellMm !== null && (signs.repeatSure || signs.agreement > LIMITS.chance);
  const clear =
    isWellOver(crossing.sum, LIMITS.sum) ||
    (isWellOver(crossing.sum, LIMITS.opaqueSum) &&
      isWellOver(crossing.sum + crossing.product, LIMITS.woven)) ||
    (squares && isWellOver(crossing.product, LIMITS.product)) ||
    (houndstooth && Math.abs(signs.slant) > 1.5 * LIMITS.slant) ||
    (glen && signs.changes > 1.5 * LIMITS.glen.changes);
  return { kind: "check", sure: repeats && clear && crossing.balance > LIMITS.oneWay };
}

/**
 * A check as fine as a weave, which a gingham of six millimetres is: bands of several colours both ways, as even as a check's, whose
 * repeat is sure. Squares so fine are a basket weave; of little contrast it is a guess.
 */
export function fineCheckOf(signs: KindSigns, leastContrast: number): JudgedKind | null {
  const { colours, cellMm, crossing } = signs;
  if (colours < 2 || !signs.repeatSure || cellMm === null || cellMm < LIMITS.fineCellMm)
    return null;
  if (!isHoundstooth(signs) && (!isBanded(crossing) || crossing.balance < LIMITS.evenBalance))
    return null;
  const check = checkOf(signs);
  return check && { ...check, sure: check.sure && signs.contrast > leastContrast };
}

/** Bands of several colours that cross on the bias and leave no open ground, as a plaid cut so: a trellis is lines on a ground. */
export function isCheckOnBias(signs: KindSigns): boolean {
  // The bands on the bias are dear: they are asked for only where they can tell.
  if (signs.colours < 3 || signs.groundShare > LIMITS.trellis) return false;
  const { onBias } = signs;
  return onBias !== null && onBias.sum > LIMITS.biasSum && onBias.balance > LIMITS.balance;
}

/** Bands up and across, as warp and weft make them, or opaque. */
function isBanded({ sum, product, balance }: Crossing): boolean {
  const opaque = sum > LIMITS.opaqueSum && sum + product > LIMITS.woven;
  return (sum > LIMITS.sum || opaque) && balance > LIMITS.balance;
}

/** A houndstooth, and what is woven like it: a shepherd's check, a gun club check. */
function isHoundstooth(signs: KindSigns): boolean {
  const { cellMm, colours, crossing, groundShare } = signs;
  return (
    cellMm !== null &&
    colours > 1 &&
    groundShare < LIMITS.evenGround &&
    crossing.sum > LIMITS.even &&
    crossing.balance > LIMITS.evenBalance &&
    Math.abs(crossing.sum + 4 * crossing.product - 1) < LIMITS.twill &&
    Math.abs(signs.slant) > LIMITS.slant &&
    signs.sumFromAfar > LIMITS.afar
  );
}

/** A glen check, or prince of wales: two yarns whose ends and picks take turns by twos in some bands and by fours in others. */
function isGlen(signs: KindSigns): boolean {
  const { cellMm, colours, crossing, groundShare } = signs;
  return (
    cellMm !== null &&
    colours > 1 &&
    groundShare < LIMITS.evenGround &&
    crossing.sum > LIMITS.glen.sum &&
    crossing.balance > LIMITS.glen.balance &&
    signs.changes > LIMITS.glen.changes &&
    signs.sumFromAfar > LIMITS.glen.afar
  );
}
