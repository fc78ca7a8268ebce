import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, stroke } from "../../common/clothFace.ts";
import { colour, type Look, part } from "./look.ts";

const f = (n: number) => n.toFixed(1);

/** The outline of a tiled stove: a cornice, a shaft that stands back a little, a plinth. */
function outline(w: number, h: number): string {
  const inset = w * 0.032;
  const cornice = h * 0.078;
  const plinth = h * 0.83;
  return `M0 0H${f(w)}V${f(cornice * 0.8)}L${f(w - inset)} ${f(cornice)}V${f(plinth)}H${f(w)}V${f(h)}H0V${f(plinth)}H${f(inset)}V${f(cornice)}L0 ${f(cornice * 0.8)}Z`;
}

/** A tiled stove: its own photograph, which shows its front from edge to edge, else tiles in its colours. */
export function drawStove(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const d = outline(w, h);
  if (look.hasPhoto) {
    return [
      floorShadow(-w * 0.01, h - 1, w * 1.02),
      { shape: "path", d, fill: { surface: "object", x: w / 2, y: h / 2 }, pen: null },
      { shape: "shading", d, light: 0.08, dark: 0.14, direction: "across" },
      stroke(d, "outline"),
    ];
  }
  const inset = w * 0.032;
  const cornice = h * 0.078;
  const plinth = h * 0.83;
  const columns = Math.max(2, Math.round((w - 2 * inset) / 210));
  const size = (w - 2 * inset) / columns;
  const rows = Math.max(1, Math.round((plinth - cornice) / size));
  const high = (plinth - cornice) / rows;
  const tiles: Shape[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const x = inset + column * size;
      const y = cornice + row * high;
      const accent = (row + column) % 3 === 1 ? 1 : 0;
      tiles.push(
        ...part(rect(x, y, size, high), colour(look, accent, "ceramic"), "edge", 0.16, 0.12),
      );
      tiles.push(
        stroke(
          roundedRect(x + size * 0.14, y + high * 0.14, size * 0.72, high * 0.72, size * 0.12),
          "fold",
        ),
      );
    }
  }
  const doorW = size * (columns > 2 ? 2 : 1) * 0.8;
  const doorX = (w - doorW) / 2;
  const doorY = plinth - high * 1.75;
  const door: Shape[] = [
    ...part(
      roundedRect(doorX, doorY, doorW, high * 1.5, 10),
      { tone: "metal" },
      "outline",
      0.1,
      0.3,
    ),
    {
      shape: "path",
      d: roundedRect(doorX + 18, doorY + 18, doorW - 36, high * 1.5 - 36, 6),
      fill: { tone: "wood-dark" },
      pen: "edge",
    },
    ...[0.62, 0.7, 0.78].map((share) =>
      stroke(
        line(
          doorX + 40,
          doorY + high * 1.5 * share,
          doorX + doorW - 40,
          doorY + high * 1.5 * share,
        ),
        "fold",
      ),
    ),
  ];
  return [
    floorShadow(-w * 0.01, h - 1, w * 1.02),
    ...tiles,
    ...(look.turned ? [] : door),
    ...part(rect(0, plinth, w, h - plinth), colour(look, 2, "ceramic"), "outline", 0.08, 0.2),
    stroke(line(0, plinth + (h - plinth) * 0.22, w, plinth + (h - plinth) * 0.22), "fold"),
    ...part(
      `M0 0H${f(w)}V${f(cornice * 0.8)}L${f(w - inset)} ${f(cornice)}H${f(inset)}L0 ${f(cornice * 0.8)}Z`,
      colour(look, 2, "ceramic"),
      "outline",
      0.2,
      0.16,
    ),
    stroke(line(0, cornice * 0.42, w, cornice * 0.42), "fold"),
    stroke(d, "outline"),
  ];
}
