/** A frustum laid flat: a ring sector. Lengths in any one unit, angles in degrees; nothing is rounded. */
export interface Development {
  readonly slant: number;
  readonly innerRadius: number;
  readonly outerRadius: number;
  readonly angleDeg: number;
}

/**
 * The net of a frustum with radii r (top) and R (foot), R > r ≥ 0, and upright height h: slant s = root(h² + (R − r)²); inner
 * radius r s / (R − r), outer R s / (R − r); angle 360 (R − r) / s ("The Net of a Frustum", geometry course page). Throws where R ≤ r.
 */
export function developFrustum(top: number, foot: number, height: number): Development {
  if (!(foot > top)) throw new Error("A frustum is wider at its foot than at its top");
  const slant = Math.hypot(height, foot - top);
  return {
    slant,
    innerRadius: (top * slant) / (foot - top),
    outerRadius: (foot * slant) / (foot - top),
    angleDeg: (360 * (foot - top)) / slant,
  };
}

/** Area of its side, π (r + R) s; with r = 0 the cone's π R s. */
export function sideArea(top: number, foot: number, height: number): number {
  return Math.PI * (top + foot) * Math.hypot(height, foot - top);
}

/** One panel of the net as it is cut, its middle upright and its apex up; the lap stands beside its right straight edge. */
export interface CutPanel {
  /** Radii with the turnings: the inner one never under nothing. */
  readonly inner: number;
  readonly outer: number;
  readonly angleDeg: number;
  /** Of the rectangle that holds it, lap and turnings included. */
  readonly width: number;
  readonly height: number;
  /** From the rectangle's left edge to the panel's middle line, and from its top edge down to the apex (negative: above it). */
  readonly middleX: number;
  readonly apexY: number;
}

/** The rectangle round one of `panels` equal panels of the net. The extremes are its corners, and where an arc runs level or upright. */
export function cutPanel(net: Development, panels: number, turn: number, lap: number): CutPanel {
  const outer = net.outerRadius + turn;
  const inner = Math.max(0, net.innerRadius - turn);
  const angleDeg = net.angleDeg / panels;
  const half = (angleDeg * Math.PI) / 360;
  // From the apex, x to the right, y down; an angle counts from straight down.
  const at = (radius: number, angle: number) => [
    radius * Math.sin(angle),
    radius * Math.cos(angle),
  ];
  const points = [inner, outer].flatMap((radius) => [at(radius, -half), at(radius, half)]);
  // The lap: the right edge moved square to itself.
  const [dx, dy] = [lap * Math.cos(half), -lap * Math.sin(half)];
  for (const radius of [inner, outer]) {
    const [x, y] = at(radius, half) as [number, number];
    points.push([x + dx, y + dy]);
  }
  points.push([0, outer], [0, inner]);
  if (half >= Math.PI / 2) points.push([outer, 0], [-outer, 0]);
  const xs = points.map(([x]) => x as number);
  const ys = points.map(([, y]) => y as number);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return {
    inner,
    outer,
    angleDeg,
    width: Math.max(...xs) - left,
    height: Math.max(...ys) - top,
    middleX: -left,
    apexY: -top,
  };
}
