import { flatOf } from "./binding.ts";
import { boundsOf } from "./bounds.ts";
import { drawFolds } from "./drawFolds.ts";
import { noteStart } from "./noteStart.ts";
import { figure, line, rect } from "./paths.ts";
import type { Pencase } from "./pencase.ts";
import { inkOf } from "./pens.ts";
import type { Fill, PathData, Shape } from "./shape.ts";
import { tilesOver, turnBox } from "./tileLayer.ts";
import { whiteGround } from "./whiteGround.ts";
import { builtText, EM_MM, escapeText, LINE_MM, textWidthMm } from "./words.ts";

type Of<S extends Shape["shape"]> = Extract<Shape, { shape: S }>;

/** One shape as SVG inside a group that is already at the drawing's scale. */
export function drawShape(shape: Shape, pencase: Pencase): string {
  switch (shape.shape) {
    case "path":
      return drawPath(shape, pencase);
    case "shading":
      return drawShading(shape, pencase);
    case "folds":
      return drawFolds(shape, pencase);
    case "photograph":
      return drawPhotograph(shape, pencase);
    case "words":
      return drawWords(shape, pencase);
    case "note":
      return drawNote(shape, pencase);
    case "sign":
      return drawSign(shape, pencase);
    case "group":
      return drawGroup(shape, pencase);
  }
}

function drawPath({ d, fill, pen }: Of<"path">, pencase: Pencase): string {
  if (pencase.isAbsent) {
    const outlined = pen === "outline" || pen === "edge";
    if (fill === null && !outlined) return "";
    if (fill !== null && "tone" in fill && fill.tone === "shadow") return "";
    const behind = fill === null ? "none" : pencase.ground;
    return `<path d="${d}" fill="${behind}" stroke-linejoin="round" ${pencase.stroke(pen)}/>`;
  }
  if (fill === null && pen === "fold" && pencase.isSmall) return "";
  const stroke = `<path d="${d}" fill="none" stroke-linejoin="round" ${pencase.stroke(pen)}/>`;
  if (fill === null) return pen === null ? "" : stroke;
  const filled = fillPath(d, fill, pencase);
  return pen === null ? filled : filled + stroke;
}

function fillPath(d: PathData, fill: Fill, pencase: Pencase): string {
  if ("tone" in fill) {
    if (fill.tone !== "shadow") return `<path d="${d}" fill="${pencase.tone(fill.tone)}"/>`;
    return pencase.style === "workshop"
      ? ""
      : `<path d="${d}" fill="#2b2622" fill-opacity="0.16"/>`;
  }
  if ("hex" in fill) return `<path d="${d}" fill="${pencase.flat(fill.hex)}"/>`;
  if ("hatch" in fill) return hatch(d, pencase);
  const binding = pencase.binding(fill.surface);
  const flat = `<path d="${d}" fill="${flatOf(binding)}"/>`;
  if (binding === null || "hex" in binding) return flat;
  const box = boundsOf(d);
  if ("href" in binding) {
    return clipped(
      d,
      `<image x="${figure(box.x1)}" y="${figure(box.y1)}" width="${figure(box.x2 - box.x1)}" height="${figure(box.y2 - box.y1)}" preserveAspectRatio="xMidYMid slice" href="${escapeText(binding.href)}"/>`,
      pencase,
    );
  }
  const turn = fill.turnDeg ?? 0;
  const area = turn === 0 ? box : turnBox(box, fill.x, fill.y, turn);
  const tiles = tilesOver(area, binding.tile, pencase.tileId(binding), fill.x, fill.y);
  const turned =
    turn === 0
      ? tiles
      : `<g transform="rotate(${figure(turn)} ${figure(fill.x)} ${figure(fill.y)})">${tiles}</g>`;
  // The flat beneath keeps the piece whole while its picture loads, and shows nothing at its edge.
  return flat + clipped(d, turned, pencase);
}

function clipped(d: PathData, content: string, pencase: Pencase): string {
  const id = pencase.newId();
  pencase.define(`<clipPath id="${id}"><path d="${d}"/></clipPath>`);
  return `<g clip-path="url(#${id})" aria-hidden="true">${content}</g>`;
}

function hatch(d: PathData, pencase: Pencase): string {
  const box = boundsOf(d);
  const step = pencase.paper(1.6) * Math.SQRT2;
  const high = box.y2 - box.y1;
  const lines: string[] = [];
  for (let x = box.x1; x < box.x2 + high; x += step) lines.push(line(x, box.y1, x - high, box.y2));
  return `<path d="${d}" fill="#fff"/>${clipped(d, `<path d="${lines.join("")}" fill="none" stroke="${inkOf(pencase.style)}" stroke-width="${figure(pencase.paper(0.13))}"/>`, pencase)}`;
}

function drawShading({ d, light, dark, direction }: Of<"shading">, pencase: Pencase): string {
  if (pencase.style === "workshop" || pencase.isAbsent) return "";
  // Run and strength alone make a gradient: faces lit alike share one.
  const id = pencase.shared((own) => {
    // In grey a lamp's light is without its warmth.
    const warm = pencase.flat("#fff6dc");
    if (direction === "glow")
      return `<radialGradient id="${own}" cx="0.5" cy="0.66" r="0.5"><stop offset="0" stop-color="${warm}" stop-opacity="${light}"/><stop offset="0.45" stop-color="${warm}" stop-opacity="${figure(light * 0.55)}"/><stop offset="1" stop-color="${warm}" stop-opacity="0"/></radialGradient>`;
    const run =
      direction === "down" ? 'x1="0" y1="0" x2="0" y2="1"' : 'x1="0" y1="0" x2="1" y2="0"';
    return `<linearGradient id="${own}" ${run}><stop offset="0" stop-color="#fff" stop-opacity="${light}"/><stop offset="0.33" stop-color="#fff" stop-opacity="0"/><stop offset="0.34" stop-color="#1c1613" stop-opacity="0"/><stop offset="1" stop-color="#1c1613" stop-opacity="${dark}"/></linearGradient>`;
  });
  return `<path d="${d}" fill="url(#${id})"/>`;
}

/** Shown whole at its own proportions: what does not fit is left out at two sides, nothing is stretched. */
function drawPhotograph(
  { surface, x, y, width, height }: Of<"photograph">,
  pencase: Pencase,
): string {
  const at = `x="${figure(x)}" y="${figure(y)}" width="${figure(width)}" height="${figure(height)}"`;
  if (pencase.isAbsent) return `<rect ${at} fill="${pencase.ground}" ${pencase.stroke("edge")}/>`;
  const binding = pencase.binding(surface);
  if (binding === null) return `<rect ${at} fill="#fff" ${pencase.stroke("hidden")}/>`;
  if ("hex" in binding) return `<rect ${at} fill="${binding.hex}"/>`;
  if ("href" in binding) {
    return `<image ${at} preserveAspectRatio="xMidYMid slice" href="${escapeText(binding.href)}"/>`;
  }
  const middle = { surface, x: x + width / 2, y: y + height / 2 };
  return fillPath(rect(x, y, width, height), middle, pencase);
}

function textBlock(
  x: number,
  y: number,
  text: string,
  anchor: string,
  bold: boolean,
  turn: number,
  pencase: Pencase,
): string {
  const lines = text.split("\n");
  const spans = lines.map((words, at) =>
    at === 0
      ? builtText(words)
      : `<tspan x="${figure(x)}" dy="${figure(pencase.paper(LINE_MM))}">${builtText(words)}</tspan>`,
  );
  const turned = turn === 0 ? "" : ` transform="rotate(${figure(turn)} ${figure(x)} ${figure(y)})"`;
  return `<text x="${figure(x)}" y="${figure(y)}" font-size="${figure(pencase.paper(EM_MM))}" text-anchor="${anchor}"${bold ? ' font-weight="700"' : ""} fill="${inkOf(pencase.style)}"${turned}>${spans.join("")}</text>`;
}

function drawWords(words: Of<"words">, pencase: Pencase): string {
  const x = words.x + pencase.paper(words.dxPaper ?? 0);
  const y = words.y + pencase.paper(words.dyPaper ?? 0);
  return textBlock(
    x,
    y,
    words.text,
    words.anchor,
    words.weight === "bold",
    words.turnDeg ?? 0,
    pencase,
  );
}

function drawNote(note: Of<"note">, pencase: Pencase): string {
  const toRight = note.dxPaper >= 0;
  const paper = (mm: number) => pencase.paper(mm);
  const start = noteStart(note, paper);
  if (start === null) return "";
  const { x, y } = start;
  const lines = note.text.split("\n");
  const words = textBlock(x, y, note.text, toRight ? "start" : "end", false, 0, pencase);
  const grounds = lines.map((each, at) => {
    const wide = textWidthMm(each);
    return whiteGround(toRight ? x : x - paper(wide), y + paper(LINE_MM * at), wide, paper);
  });
  const text = `${grounds.join("")}${words}`;
  if (note.end === "none") return text;
  const gap = pencase.paper(0.8);
  const under = pencase.paper(1.1);
  // The leader leaves from the side of the text that faces its point.
  const beside = Math.abs(note.dxPaper) >= 3;
  const fromX = beside
    ? x + (toRight ? -gap : gap)
    : x + (toRight ? 1 : -1) * pencase.paper(Math.min(8, textWidthMm(lines[0] as string)) / 2);
  const fromY = beside
    ? y - under
    : note.dyPaper > 0
      ? y - pencase.paper(EM_MM * 0.85)
      : y + pencase.paper(0.8 + LINE_MM * (lines.length - 1));
  const leader = `<path d="${line(fromX, fromY, note.x, note.y)}" fill="none" ${pencase.stroke("dimension")}/>`;
  const ink = inkOf(pencase.style);
  if (note.end === "dot") {
    return `${leader}<circle cx="${figure(note.x)}" cy="${figure(note.y)}" r="${figure(pencase.paper(0.6))}" fill="${ink}"/>${text}`;
  }
  const angle = (Math.atan2(note.y - fromY, note.x - fromX) * 180) / Math.PI;
  return `${leader}${arrowHead(note.x, note.y, angle, pencase, ink)}${text}`;
}

/** A closed arrow head 2.6 × 1 mm on paper, its point at (x, y). */
function arrowHead(x: number, y: number, turn: number, pencase: Pencase, ink: string): string {
  const p = (mm: number) => figure(pencase.paper(mm));
  return `<path d="M0 0L${p(-2.6)} ${p(-0.5)}V${p(0.5)}Z" fill="${ink}" transform="translate(${figure(x)} ${figure(y)}) rotate(${figure(turn)})"/>`;
}

function drawSign({ sign, x, y, turnDeg }: Of<"sign">, pencase: Pencase): string {
  const p = (mm: number) => figure(pencase.paper(mm));
  const ink = inkOf(pencase.style);
  const place = `translate(${figure(x)} ${figure(y)})${turnDeg ? ` rotate(${figure(turnDeg)})` : ""}`;
  if (sign === "lozenge") {
    return `<path d="M0 ${p(-2)}L${p(1.5)} 0L0 ${p(2)}L${p(-1.5)} 0Z" fill="#fff" transform="${place}" stroke-linejoin="round" ${pencase.stroke("edge")}/>`;
  }
  return `<g transform="${place}"><path d="M${p(-6)} 0H${p(3.5)}" fill="none" ${pencase.stroke("edge")}/><path d="M${p(6)} 0L${p(3.4)} ${p(-0.7)}V${p(0.7)}Z" fill="${ink}"/></g>`;
}

function drawGroup(group: Of<"group">, pencase: Pencase): string {
  const moves: string[] = [];
  if (group.x || group.y) moves.push(`translate(${figure(group.x ?? 0)} ${figure(group.y ?? 0)})`);
  if (group.turnDeg) moves.push(`rotate(${figure(group.turnDeg)})`);
  if (group.mirror) moves.push("scale(-1 1)");
  const all = () => group.children.map((child) => drawShape(child, pencase)).join("");
  const inside = group.toCome ? pencase.absent(all) : all();
  return moves.length > 0 ? `<g transform="${moves.join(" ")}">${inside}</g>` : `<g>${inside}</g>`;
}
