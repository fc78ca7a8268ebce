import { mirrorPath } from "../../../drawing/mirrorPath.ts";
import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { face, floorShadow, PADDED, roundedBand, stroke } from "../../common/clothFace.ts";
import type { ChairShape } from "./shapeOfChair.ts";

const f = (n: number) => n.toFixed(1);

function wood(d: string, dark = 0.18): Shape[] {
  return [
    { shape: "path", d, fill: { tone: "wood" }, pen: null },
    { shape: "shading", d, light: 0.14, dark, direction: "down" },
    stroke(d, "edge"),
  ];
}

/** Heights and thicknesses of a chair whose frame shows: usual proportions (common practice, no source). */
export function openParts(c: ChairShape) {
  const post = Math.min(Math.max(c.width * 0.07, 28), 46);
  const pad = Math.min(80, (c.height - c.seatTop) * 0.2);
  return {
    post,
    pad,
    rail: 52,
    arm: Math.max(c.seatTop - 205, c.height * 0.26),
    panelFoot: c.seatTop - Math.min(105, c.seatTop * 0.2),
    backLeft: c.width * 0.1,
  };
}

/**
 * A chair with open arms from the front: a wooden frame, an upholstered back panel and a sprung seat. For chairs whose list has no
 * arms among its pieces.
 */
export function openFront(
  c: ChairShape,
  surfaces: { readonly back: string; readonly seat: string },
  welted: boolean,
): Shape[] {
  const { post, pad, rail, arm, panelFoot, backLeft } = openParts(c);
  const mid = c.width / 2;
  const flip = (d: string) => mirrorPath(d, c.width);
  const both = (d: string, dark?: number) => [...wood(d, dark), ...wood(flip(d), dark)];
  const frameW = c.width - 2 * backLeft;
  const crest = `M${f(backLeft)} ${f(panelFoot + 14)}V${f(42)}C${f(backLeft + 6)} ${f(14)} ${f(backLeft + frameW * 0.2)} ${f(16)} ${f(backLeft + frameW * 0.34)} ${f(8)}C${f(backLeft + frameW * 0.44)} ${f(1)} ${f(backLeft + frameW * 0.56)} ${f(1)} ${f(backLeft + frameW * 0.66)} ${f(8)}C${f(backLeft + frameW * 0.8)} ${f(16)} ${f(c.width - backLeft - 6)} ${f(14)} ${f(c.width - backLeft)} ${f(42)}V${f(panelFoot + 14)}Z`;
  const px = backLeft + post * 0.8;
  const panel = { x: px, y: 44, w: c.width - 2 * px, h: panelFoot - 50 };
  const frontLeg = `M4 ${f(c.seatTop + pad * 0.6)}H${f(post + 8)}L${f(post - 2)} ${f(c.height)}H${f(10)}Z`;
  const backLeg = rect(
    backLeft + post * 0.6,
    c.seatTop + pad,
    post * 0.66,
    c.height - c.seatTop - pad - 14,
  );
  const support = `M${f(post * 0.28)} ${f(arm + 24)}C${f(post * 0.5)} ${f(arm + (c.seatTop - arm) * 0.5)} ${f(post * 0.1)} ${f(c.seatTop - 30)} ${f(6)} ${f(c.seatTop + pad * 0.7)}H${f(post + 4)}C${f(post * 0.9)} ${f(c.seatTop - 30)} ${f(post * 1.25)} ${f(arm + (c.seatTop - arm) * 0.5)} ${f(post * 1.06)} ${f(arm + 24)}Z`;
  const knuckle = roundedRect(0, arm - 8, post * 1.36, 42, 18);
  const seat = roundedRect(post * 0.5, c.seatTop, c.width - post, pad, Math.min(30, pad * 0.42));
  return [
    floorShadow(c.width * 0.02, c.height - 1, c.width * 0.96),
    ...[backLeg, flip(backLeg)].map(
      (d): Shape => ({ shape: "path", d, fill: { tone: "wood-dark" }, pen: "edge" }),
    ),
    ...both(rect(backLeft, panelFoot, post * 0.8, c.seatTop - panelFoot + 6)),
    ...wood(c.padBack ? crest : crest + bareBack(panel)),
    ...(c.padBack
      ? face(
          roundedRect(panel.x, panel.y, panel.w, panel.h, 22),
          { surface: surfaces.back, x: mid, y: panel.y + panel.h / 2 },
          PADDED,
          "edge",
        )
      : []),
    ...(welted && c.padBack
      ? [
          {
            shape: "path",
            d: roundedBand(panel.x, panel.y, panel.w, panel.h, 22, 8),
            fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
            pen: "fold",
          } as const,
        ]
      : []),
    ...both(frontLeg, 0.24),
    ...wood(rect(post * 0.7, c.seatTop + pad - 12, c.width - post * 1.4, rail), 0.26),
    ...face(
      seat,
      { surface: surfaces.seat, x: mid, y: c.seatTop + pad / 2 },
      { light: 0.26, dark: 0.24 },
    ),
    ...(welted
      ? [
          {
            shape: "path",
            d: roundedBand(post * 0.5 + 2, c.seatTop + pad - 14, c.width - post - 4, 12, 6, 5.9),
            fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
            pen: "fold",
          } as const,
        ]
      : []),
    ...(c.arms
      ? [
          ...both(support, 0.2),
          ...both(knuckle),
          stroke(line(post * 0.3, arm + 6, post * 1.0, arm + 6), "fold"),
          stroke(line(c.width - post * 0.3, arm + 6, c.width - post * 1.0, arm + 6), "fold"),
        ]
      : []),
  ];
}

/** Openings of a back without cloth, three beside two splats; run the other way, so that the wall is seen through them. */
function bareBack(panel: { x: number; y: number; w: number; h: number }): string {
  const splat = panel.w * 0.12;
  const gap = (panel.w - 2 * splat) / 3;
  return [0, 1, 2]
    .map((at) => {
      const x = panel.x + at * (gap + splat);
      const [top, foot] = [panel.y + 6, panel.y + panel.h - 6];
      return `M${f(x)} ${f(top)}V${f(foot)}H${f(x + gap)}V${f(top)}Z`;
    })
    .join("");
}

/** The same chair from behind: its posts run down into the back legs, and the panel's outside is covered. */
export function openBack(c: ChairShape, surface: string): Shape[] {
  const { post, pad, rail, arm, panelFoot, backLeft } = openParts(c);
  const flip = (d: string) => mirrorPath(d, c.width);
  const both = (d: string, dark?: number) => [...wood(d, dark), ...wood(flip(d), dark)];
  const right = c.width - backLeft;
  const wide = right - backLeft;
  const crest = `M${f(backLeft)} ${f(panelFoot + 14)}V${f(42)}C${f(backLeft + 6)} ${f(14)} ${f(backLeft + wide * 0.2)} ${f(16)} ${f(backLeft + wide * 0.34)} ${f(8)}C${f(backLeft + wide * 0.44)} ${f(1)} ${f(backLeft + wide * 0.56)} ${f(1)} ${f(backLeft + wide * 0.66)} ${f(8)}C${f(backLeft + wide * 0.8)} ${f(16)} ${f(right - 6)} ${f(14)} ${f(right)} ${f(42)}V${f(panelFoot + 14)}Z`;
  const px = backLeft + post * 0.62;
  const panel = { x: px, y: 40, w: c.width - 2 * px, h: panelFoot - 40 };
  const frontLeg = rect(4, c.seatTop + pad * 0.6, post, c.height - c.seatTop - pad * 0.6 - 10);
  const backLeg = `M${f(backLeft)} ${f(panelFoot)}H${f(backLeft + post * 0.8)}V${f(c.seatTop + pad)}L${f(backLeft + post * 0.5)} ${f(c.height)}H${f(backLeft - post * 0.1)}L${f(backLeft)} ${f(c.seatTop + pad)}Z`;
  const knuckle = roundedRect(0, arm - 8, post * 1.2, 42, 18);
  return [
    floorShadow(c.width * 0.02, c.height - 1, c.width * 0.96),
    ...[frontLeg, flip(frontLeg)].map(
      (d): Shape => ({ shape: "path", d, fill: { tone: "wood-dark" }, pen: "edge" }),
    ),
    ...(c.arms
      ? [
          ...both(rect(post * 0.2, arm + 20, post * 0.8, c.seatTop + pad - arm - 20), 0.24),
          ...both(knuckle),
        ]
      : []),
    ...wood(rect(post * 0.7, c.seatTop + 6, c.width - post * 1.4, rail + pad - 18), 0.26),
    ...both(backLeg, 0.2),
    ...wood(c.padBack ? crest : crest + bareBack(panel)),
    ...(c.padBack
      ? face(
          roundedRect(panel.x, panel.y, panel.w, panel.h, 18),
          { surface, x: c.width / 2, y: panel.y + panel.h / 2 },
          PADDED,
          "edge",
        )
      : []),
  ];
}

/** The same chair from its left side, its front to the left. */
export function openSide(
  c: ChairShape,
  surfaces: { readonly back: string; readonly seat: string },
): Shape[] {
  const { post, pad, rail, arm, panelFoot } = openParts(c);
  const d = c.depth;
  const top = d - post - 4;
  const knee = d * 0.84;
  const back = `M${f(top)} ${f(8)}Q${f(d)} ${f(0)} ${f(d)} ${f(26)}C${f(d - 6)} ${f(c.seatTop * 0.6)} ${f(knee + post)} ${f(c.seatTop * 0.8)} ${f(knee + post)} ${f(c.seatTop + pad)}L${f(d * 0.97)} ${f(c.height)}H${f(d * 0.97 - post * 0.7)}L${f(knee)} ${f(c.seatTop + pad)}C${f(knee)} ${f(c.seatTop * 0.78)} ${f(top - 8)} ${f(c.seatTop * 0.6)} ${f(top)} ${f(8)}Z`;
  const cushion = `M${f(top - 4)} ${f(40)}C${f(top - 44)} ${f(panelFoot * 0.3)} ${f(knee - 34)} ${f(panelFoot * 0.7)} ${f(knee - 2)} ${f(panelFoot)}L${f(knee + 8)} ${f(panelFoot)}C${f(knee + 10)} ${f(panelFoot * 0.75)} ${f(top - 2)} ${f(panelFoot * 0.5)} ${f(top + 2)} ${f(40)}Z`;
  const leg = `M${f(d * 0.1)} ${f(c.seatTop + pad * 0.6)}H${f(d * 0.1 + post)}L${f(d * 0.1 + post * 0.82)} ${f(c.height)}H${f(d * 0.1 + post * 0.12)}Z`;
  const support = `M${f(d * 0.16)} ${f(arm + 22)}C${f(d * 0.24)} ${f(arm + 80)} ${f(d * 0.12)} ${f(c.seatTop - 30)} ${f(d * 0.12)} ${f(c.seatTop + pad)}H${f(d * 0.12 + post * 0.9)}C${f(d * 0.12 + post)} ${f(c.seatTop - 20)} ${f(d * 0.34)} ${f(arm + 80)} ${f(d * 0.26)} ${f(arm + 22)}Z`;
  const armRail = `M${f(d * 0.1)} ${f(arm + 6)}C${f(d * 0.08)} ${f(arm - 14)} ${f(d * 0.16)} ${f(arm - 14)} ${f(d * 0.22)} ${f(arm - 8)}C${f(d * 0.4)} ${f(arm + 8)} ${f(d * 0.66)} ${f(arm + 2)} ${f(knee + post * 0.7)} ${f(arm - 16)}L${f(knee + post * 0.6)} ${f(arm + 12)}C${f(d * 0.66)} ${f(arm + 30)} ${f(d * 0.4)} ${f(arm + 34)} ${f(d * 0.2)} ${f(arm + 26)}C${f(d * 0.12)} ${f(arm + 26)} ${f(d * 0.1)} ${f(arm + 20)} ${f(d * 0.1)} ${f(arm + 6)}Z`;
  const seat = roundedRect(
    d * 0.04,
    c.seatTop,
    knee - d * 0.04 + 12,
    pad,
    Math.min(30, pad * 0.42),
  );
  return [
    ...wood(back),
    ...(c.padBack
      ? face(cushion, { surface: surfaces.back, x: d, y: c.seatTop / 2 }, PADDED, "edge")
      : []),
    ...wood(leg),
    ...wood(rect(d * 0.08, c.seatTop + pad - 12, knee - d * 0.06, rail), 0.26),
    ...face(
      seat,
      { surface: surfaces.seat, x: d / 2, y: c.seatTop + pad / 2 },
      { light: 0.26, dark: 0.24 },
    ),
    ...(c.arms ? [...wood(support), ...wood(armRail)] : []),
  ];
}
