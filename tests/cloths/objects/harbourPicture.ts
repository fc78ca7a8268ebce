import { harbour } from "../designs/palettes.ts";
import { rasterise } from "../ground/drawn.ts";
import { mixHex } from "../ground/light.ts";
import { cloudy } from "../ground/noise.ts";
import type { LightTile } from "../ground/tile.ts";
import { painting } from "../techniques/painting.ts";

export const PICTURE = { widthMm: 24 * 25.4, heightMm: 18 * 25.4 };

/** The scene in flat colour, in a frame of 240 by 180: a harbour at low water, evening, seen from the slip. */
function scene(): string {
  const { ink, tide, mist, clay, blush, straw, chalk, weed, slate, peat } = harbour;
  const m = mixHex;
  const p = (d: string, fill: string) => `<path d="${d}" fill="${fill}"/>`;
  const roof = (x: number, y: number, w: number, h: number, wall: string, tile: string) =>
    p(`M${x} ${y}h${w}v${h}h${-w}z`, wall) +
    p(
      `M${x - 1.5} ${y + 0.5}L${x + w * 0.2} ${y - h * 0.42}L${x + w * 0.82} ${y - h * 0.42}L${x + w + 1.5} ${y + 0.5}z`,
      tile,
    ) +
    p(`M${x + w * 0.74} ${y - h * 0.62}h3.4v${h * 0.4}h-3.4z`, m(tile, peat, 0.3)) +
    [0.2, 0.6]
      .map((t) =>
        p(`M${x + w * t} ${y + h * 0.3}h${w * 0.14}v${h * 0.26}h${-w * 0.14}z`, m(slate, ink, 0.6)),
      )
      .join("");
  return [
    p("M0 0H240V180H0z", m(mist, chalk, 0.45)),
    p("M0 0H240V24C180 34 120 14 60 26C36 30 16 24 0 28z", m(mist, tide, 0.35)),
    p("M0 34C50 26 90 42 150 34C190 29 220 36 240 32V66H0z", m(chalk, blush, 0.55)),
    p("M0 52C60 44 120 58 240 48V72H0z", m(blush, straw, 0.45)),
    p(
      "M14 26C22 14 36 20 44 12C56 6 68 16 78 12C88 10 96 18 104 20C92 26 70 24 56 28C40 30 26 30 14 26z",
      m(chalk, blush, 0.12),
    ),
    p("M20 26C40 30 70 26 100 21C84 31 40 36 20 26z", m(mist, blush, 0.5)),
    p(
      "M136 22C144 12 160 18 170 10C182 4 194 12 204 8C216 4 224 12 232 14C220 22 196 20 180 24C164 28 148 26 136 22z",
      m(chalk, straw, 0.2),
    ),
    p("M142 22C164 28 200 20 230 15C212 26 164 33 142 22z", m(mist, blush, 0.6)),
    // Far headland and near hill.
    p("M90 74C118 58 150 56 176 60C204 64 224 60 240 56V82H90z", m(slate, mist, 0.35)),
    p("M0 64C22 52 52 50 84 66C98 73 108 76 118 80H0z", m(weed, slate, 0.35)),
    // Water.
    p("M0 78H240V128H0z", m(tide, mist, 0.2)),
    p("M0 96C60 92 140 98 240 94V128H0z", tide),
    p("M60 112C110 106 180 112 240 108V130H40z", m(tide, ink, 0.55)),
    p("M0 84C30 82 60 86 100 83C70 88 30 88 0 86z", m(mist, chalk, 0.4)),
    p("M10 100C40 98 66 103 90 100C60 105 30 105 10 100z", m(tide, ink, 0.5)),
    p("M190 100C205 98 226 102 240 100V104C220 106 204 105 190 100z", m(mist, tide, 0.3)),
    p("M120 84C150 83 190 85 230 83C200 88 150 88 120 84z", m(blush, chalk, 0.3)),
    p("M150 92C176 90 200 93 226 91C206 96 170 97 150 92z", m(straw, chalk, 0.4)),
    // Houses on the quay.
    p("M0 92H96V104H0z", m(slate, peat, 0.4)),
    roof(2, 68, 24, 25, m(chalk, straw, 0.15), clay),
    roof(25, 72, 18, 21, m(blush, chalk, 0.4), m(clay, peat, 0.25)),
    roof(43, 64, 22, 29, chalk, m(slate, ink, 0.4)),
    roof(65, 73, 20, 20, m(straw, chalk, 0.4), clay),
    p("M0 93H104L112 112H0z", m(slate, mist, 0.1)),
    p("M0 104H108L116 118H0z", m(slate, ink, 0.5)),
    // Wet sand.
    p("M0 118C60 112 104 118 140 126C180 134 216 130 240 126V180H0z", m(straw, blush, 0.4)),
    p(
      "M0 134C50 128 120 138 170 142C200 145 226 142 240 140V150C180 156 90 146 0 148z",
      m(blush, mist, 0.35),
    ),
    p("M0 156C60 148 150 164 240 156V180H0z", m(straw, clay, 0.28)),
    p("M18 142C50 138 84 140 104 146C80 150 40 150 18 142z", m(mist, tide, 0.4)),
    p("M168 160C196 156 222 158 238 162C214 168 186 168 168 160z", m(mist, chalk, 0.3)),
    // The boat, aground, and her reflection.
    p(
      "M112 146C136 152 186 152 208 142C206 152 196 158 158 159C132 159 118 154 112 146z",
      m(ink, straw, 0.35),
    ),
    p("M106 118C122 128 190 128 214 114C212 134 200 146 160 147C128 147 112 138 106 118z", ink),
    p("M106 118C122 128 190 128 214 114L213 119C190 133 124 133 107 123z", chalk),
    p("M110 134C126 144 186 146 206 132C200 142 188 147 160 147C132 147 118 142 110 134z", clay),
    p("M150 104h26l4 18h-32z", m(straw, chalk, 0.2)),
    p("M155 108h7v7h-7zM166 108h7v7h-7z", m(ink, tide, 0.3)),
    p("M142.4 122L143.6 30L144.8 122z", m(peat, clay, 0.25)),
    p("M145 40L146.4 118L184 110C170 92 154 66 145 40z", m(clay, peat, 0.12)),
    p("M145 52L146.2 116L166 112C158 96 150 76 145 52z", m(clay, blush, 0.35)),
    p("M141 48L140.6 116L120 118C126 94 134 70 141 48z", m(straw, chalk, 0.35)),
    // A small tender.
    p("M20 160C32 166 62 166 74 158C72 168 62 172 46 172C32 172 24 168 20 160z", m(tide, ink, 0.3)),
    p("M20 160C32 166 62 166 74 158L73 161.4C60 168 34 168 21 163z", m(chalk, straw, 0.2)),
  ].join("");
}

/** The picture over the desk: an evening harbour in oils, in the colours that the study takes up. */
export async function harbourPicture(pxPerMm: number): Promise<LightTile> {
  const flat = await rasterise(
    { widthMm: 240, heightMm: 180, ground: harbour.mist, layers: [scene()] },
    (pxPerMm * PICTURE.widthMm) / 240,
  );
  const s = flat.width / 1500;
  const swirl = cloudy(1401, 5, 4);
  const flow = (u: number, v: number) =>
    v < 0.42 ? -0.25 + 1.0 * swirl(u, v) : v < 0.68 ? 0.5 * swirl(u, v) : 0.1 + 0.6 * swirl(u, v);
  const painted = painting(
    flat,
    flow,
    [
      { strokes: 1300, wide: 58 * s, long: 190 * s, tolerance: 0.3 },
      { strokes: 3600, wide: 34 * s, long: 100 * s, tolerance: 0.22 },
      { strokes: 5200, wide: 20 * s, long: 60 * s, tolerance: 0.26 },
      { strokes: 9000, wide: 11 * s, long: 34 * s, tolerance: 0.34 },
    ],
    1402,
  );
  return { ...painted, pxPerMm: painted.width / PICTURE.widthMm };
}
