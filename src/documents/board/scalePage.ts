import type { Finding } from "../../scheme/finding.ts";
import type { Ladder } from "../../scheme/ladder.ts";
import type { RoleOf } from "../../scheme/roles.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { partAboutMotif, shownHeightMm } from "../pictures/aboutMotif.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { escapeHtml, type Markup, marked } from "../words/marks.ts";
import { listed, scaleWords, shortened } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { shadowOf, tileImages } from "./cuttings.ts";
import { edgePath } from "./edges.ts";
import { fillOf } from "./mix.ts";
import { repeatWords } from "./repeatWords.ts";
import { rulerSvg } from "./ruler.ts";
import type { BoardSheet } from "./sheetGeometry.ts";

export interface ScaleCaption {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly name: string;
  readonly words: Markup;
}

export interface DistanceRow {
  readonly y: number;
  readonly name: string;
  readonly words: string;
}

export interface ScalePage {
  readonly title: string;
  readonly standfirst: string;
  readonly svg: Markup;
  readonly captions: readonly ScaleCaption[];
  readonly rows: readonly DistanceRow[];
  readonly distanceX: number;
  readonly note: { readonly plain: string; readonly close: Markup; readonly door: string } | null;
  readonly noteY: number;
}

/** Distances at which each cloth is shown, in metres: doubling steps, whole numbers in the studio's own unit. */
const DISTANCES_M: Readonly<Record<UnitSystem, readonly number[]>> = {
  inches: [3, 6, 12, 24].map((feet) => feet * 0.3048),
  centimetres: [1, 2, 4, 8],
};
const PATCH = 15;
const r = svgNumber;

function rounded(mm: number, units: UnitSystem): string {
  const exact = Length.mm((Math.round(mm * 100) / 100).toString());
  if (units === "inches") return printLength(exact.nearest(Length.inches("0.25")), units);
  return printLength(exact.nearest(Length.mm(mm < 100 ? 1 : 5)), units);
}

/** The scale at which the largest motif and the widest repeat can both be shown whole. */
function scaleFor(swatches: readonly Swatch[], lengthMm: number): number {
  const motif = Math.max(0, ...swatches.map((s) => s.motifMm ?? 0));
  const up = Math.max(
    0,
    ...swatches.map((s) => (s.repeat && s.kind !== "stripe" ? s.repeat.upMm : 0)),
  );
  const across = Math.max(0, ...swatches.map((s) => s.repeat?.acrossMm ?? 0));
  return (
    [2, 3, 4, 5, 6, 8, 10].find(
      (s) => motif / s <= 46 && up / s <= lengthMm * 1.08 && across / s <= 120,
    ) ?? 12
  );
}

/** A mug, nine centimetres high, drawn at one to `scale`, standing on (x, base): a size that every hand knows. */
function mug(x: number, base: number, scale: number): string {
  const h = 90 / scale;
  const w = 78 / scale;
  return `<path d="M${r(x)} ${r(base - h)}q${r(w * 0.03)} ${r(h * 0.7)} ${r(w * 0.16)} ${r(h)}h${r(w * 0.68)}q${r(w * 0.13)} ${r(-h * 0.3)} ${r(w * 0.16)} ${r(-h)}z" fill="#fff" stroke="#23282e" stroke-width=".3" stroke-linejoin="round"/><ellipse cx="${r(x + w / 2)}" cy="${r(base - h)}" rx="${r(w / 2)}" ry="${r(h * 0.07)}" fill="#fff" stroke="#23282e" stroke-width=".3"/><path d="M${r(x + w * 0.97)} ${r(base - h * 0.78)}c${r(w * 0.42)} ${r(-h * 0.06)} ${r(w * 0.36)} ${r(h * 0.5)} ${r(-w * 0.05)} ${r(h * 0.46)}" fill="none" stroke="#23282e" stroke-width=".3"/>`;
}

interface Strip {
  readonly swatch: Swatch;
  readonly x: number;
  readonly width: number;
}

function strips(swatches: readonly Swatch[], from: number, to: number, scale: number): Strip[] {
  const gap = 3;
  const base = swatches.map((s) => {
    const one =
      (s.repeat?.acrossMm ??
        (s.kind === "stripe" ? s.repeat?.upMm : null) ??
        (s.motifMm ?? 60) * 1.8) / scale;
    return Math.min(112, Math.max(26, one < 26 ? one * Math.ceil(26 / one) : one));
  });
  const room = to - from - gap * (swatches.length - 1);
  const sum = base.reduce((a, b) => a + b, 0);
  const factor = Math.min(1.45, room / sum);
  let x = from;
  return swatches.map((swatch, at) => {
    const width = Math.max(20, (base[at] as number) * factor);
    const strip = { swatch, x, width };
    x += width + gap;
    return strip;
  });
}

function lengthSvg(
  strip: Strip,
  top: number,
  height: number,
  scale: number,
  book: PictureBook,
  id: string,
): string {
  const d = edgePath("frayed", strip.x, top, strip.width, height);
  const fill = fillOf(strip.swatch, strip.width, height, scale, book);
  const shadow = shadowOf("#ffffff");
  const inner =
    "picture" in fill
      ? `<image href="${escapeHtml(fill.picture)}" x="${r(strip.x)}" y="${r(top)}" width="${r(strip.width)}" height="${r(height)}" preserveAspectRatio="xMidYMid slice"/>`
      : "tile" in fill
        ? tileImages(
            fill.tile,
            scale,
            { x: strip.x, y: top, width: strip.width, height },
            strip.x + strip.width * 0.5,
            top + height * 0.3,
          )
        : "flat" in fill
          ? `<path d="${d}" fill="${fill.flat}"/>`
          : fill.awaited
              .map(
                (hex, i, all) =>
                  `<rect x="${r(strip.x)}" y="${r(top + (height * i) / all.length)}" width="${r(strip.width)}" height="${r(height / all.length + 0.05)}" fill="${hex}"/>`,
              )
              .join("");
  return `<path d="${d}" transform="translate(.5 .8)" fill="${shadow}" fill-opacity=".14"/><clipPath id="${id}"><path d="${d}"/></clipPath><g clip-path="url(#${id})">${inner}</g>`;
}

/** What is said of rungs that stand too close, and was not overruled. */
function closeRungs(room: RoomData): Finding[] {
  return room.scheme.findings.filter((f) => f.code === "rungs-close" && f.accepted === null);
}

/** The client reads of them only where the studio publishes it. */
function isPublished(room: RoomData): boolean {
  return room.record.fields.publish?.includes("rungs-close") ?? false;
}

/** Pairs of rungs that a published finding speaks of: the red of a ratio comes from the finding itself. */
function spokenOf(room: RoomData): ReadonlySet<string> {
  return new Set(isPublished(room) ? closeRungs(room).map((f) => f.of.join(" ")) : []);
}

/** The words beside the ladder: what is right in it, and what is not only where that is published. */
function ladderNote(room: RoomData, units: UnitSystem): ScalePage["note"] {
  const { steps } = room.scheme.ladder;
  const door = fromDoor(room, units);
  const note = (plain: string, close = ""): ScalePage["note"] => ({
    plain,
    close: marked(close),
    door,
  });
  if (steps.length === 0) return door ? note("") : null;
  const row = "The motifs, largest to smallest, at the same scale.";
  const rule = "Each should be clearly smaller than the one before";
  const close = closeRungs(room)[0];
  if (!close) {
    const least = Math.min(...steps.map((s) => s.ratio));
    return note(`${row} ${rule}; here every step is ×${least.toFixed(1)} or more.`);
  }
  return isPublished(room) ? note(`${row} ${rule}.`, close.message) : note(row);
}

function ladderSvg(
  ladder: Ladder,
  swatches: ReadonlyMap<string, Swatch>,
  base: number,
  from: number,
  to: number,
  scale: number,
  book: PictureBook,
  units: UnitSystem,
  prefix: string,
  red: ReadonlySet<string>,
): string {
  const rungs = ladder.rungs.slice(0, 7);
  const mugWidth = 110 / scale;
  const total = rungs.reduce((a, g) => a + g.motifMm / scale, 0);
  const gap = Math.min(19, Math.max(11, (to - from - total - mugWidth) / rungs.length));
  let x = from;
  let out = "";
  for (const [at, rung] of rungs.entries()) {
    const radius = rung.motifMm / scale / 2;
    const cx = x + radius;
    const cy = base - radius;
    const swatch = swatches.get(rung.cloth);
    const tile = swatch ? book.tile(swatch, scale) : null;
    const box = {
      x: cx - radius,
      y: cy - radius,
      width: radius * 2,
      height: radius * 2,
    };
    out += `<clipPath id="${prefix}-l${at}"><circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}"/></clipPath>`;
    out += tile
      ? `<g clip-path="url(#${prefix}-l${at})">${tileImages(tile, scale, box, cx, cy)}</g>`
      : `<circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}" fill="${swatch?.average ?? "#ddd"}"/>`;
    out += `<circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}" fill="none" stroke="#23282e" stroke-width=".25"/>`;
    out += `<text class="drawn" x="${r(x)}" y="${r(base + 4.6)}" font-size="3.5">${marked(
      rounded(rung.motifMm, units),
    )
      .html.replace(/<span class="frac">/g, '<tspan class="frac">')
      .replace(/<\/span>/g, "</tspan>")}</text>`;
    x += radius * 2;
    const step = ladder.steps[at];
    if (step && at < rungs.length - 1)
      out += `<text class="drawn ratio${red.has(`${step.larger.cloth} ${step.smaller.cloth}`) ? " close" : ""}" x="${r(x + gap / 2)}" y="${r(base - 2)}" text-anchor="middle" font-size="4.2">×${step.ratio.toFixed(1)}</text>`;
    x += gap;
  }
  out += mug(x + 2, base, scale);
  out += `<text class="drawn" x="${r(x + 2)}" y="${r(base + 4.6)}" font-size="3.5">a mug, ${units === "inches" ? '3<tspan dx=".6" class="frac">1/2</tspan>\u2033' : "9\u202fcm"}</text>`;
  return `<path d="M${r(from)} ${r(base)}H${r(x + mugWidth + 2)}" stroke="#23282e" stroke-width=".25"/>${out}`;
}

function patchesSvg(
  swatch: Swatch,
  x: number,
  y: number,
  book: PictureBook,
  id: string,
  units: UnitSystem,
): string {
  let out = "";
  for (const [at, metres] of DISTANCES_M[units].entries()) {
    const px = x + at * (PATCH + 1.4);
    const scale = metres / 0.5;
    const box = `<rect x="${r(px)}" y="${r(y)}" width="${PATCH}" height="${PATCH}"`;
    const gone = swatch.readsPlainFromM !== null && metres >= swatch.readsPlainFromM;
    const near = gone ? null : metres <= 2.1 ? nearPatch(swatch, scale, book) : null;
    const tile = gone || near ? null : book.tile(swatch, scale <= 8 ? 5 : 8);
    if (near)
      out += `<image href="${escapeHtml(near)}" x="${r(px)}" y="${r(y)}" width="${PATCH}" height="${PATCH}" preserveAspectRatio="xMidYMid slice"/>`;
    else if (tile)
      out += `<clipPath id="${id}-${at}">${box}/></clipPath><g clip-path="url(#${id}-${at})">${tileImages(tile, scale, { x: px, y, width: PATCH, height: PATCH }, px + PATCH / 2, y + PATCH / 2)}</g>`;
    else out += `${box} fill="${swatch.average ?? "#e4e4e0"}"/>`;
  }
  return out;
}

/** A patch seen from near is a small crop at the photograph's own resolution: a whole tile would weigh too much. */
function nearPatch(swatch: Swatch, scale: number, book: PictureBook): string | null {
  const photo = swatch.photo;
  if (!photo?.showsMm) return null;
  const size = PATCH * scale;
  if (size > Math.min(photo.showsMm, shownHeightMm(photo, photo.showsMm))) return null;
  const part = partAboutMotif(photo, photo.showsMm, { width: size, height: size });
  return book.crop(swatch, part, PATCH)?.href ?? null;
}

function plainFrom(swatch: Swatch, units: UnitSystem): string {
  if (isPlain(swatch)) return "a plain at any distance";
  const m = swatch.readsPlainFromM;
  const far = m === null || m > FAR_M;
  const shown = distance(far ? FAR_M : m, units);
  return far ? `a pattern beyond ${shown}` : `a plain from ${shown}`;
}

/** Further than this nobody looks at a cloth in a room. */
const FAR_M = 12;

function distance(m: number, units: UnitSystem): string {
  return units === "inches" ? `${Math.round(m / 0.3048)}\u202fft` : `${Math.round(m)}\u202fm`;
}

/** What each cloth is from the door, in a sentence; empty where no distance from the door is known. */
function fromDoor(room: RoomData, units: UnitSystem): string {
  const seen = room.scheme.views.filter((v) => v.doorM !== null);
  const held = seen.filter((v) => !v.plainFromDoor);
  const gone = seen.filter((v) => v.plainFromDoor);
  const far = Math.max(...seen.map((v) => v.doorM ?? 0));
  if (seen.length === 0) return "";
  const holds =
    held.length > 0
      ? `${listed(held.map((v) => v.name))} ${held.length > 1 ? "read as patterns" : "reads as a pattern"}`
      : "";
  const plain =
    gone.length > 0
      ? `${listed(gone.map((v) => v.name))} ${gone.length > 1 ? "are plains" : "is a plain"}`
      : "";
  const body = [holds, plain].filter((t) => t !== "").join(", ");
  return `From the door, up to ${distance(far, units)} away, ${body}.`;
}

/** The scale page of a room: every pattern as a length at one true scale, the ladder of motifs, and how each reads across the room. */
export function scalePageOf(
  data: ProjectData,
  room: RoomData,
  sheet: BoardSheet,
  book: PictureBook,
  prefix: string,
): ScalePage | null {
  const units = data.studio.fields.units;
  const byMotif = (a: RoleOf, b: RoleOf): number =>
    (b.motifMm ?? 0) - (a.motifMm ?? 0) || (a.cloth < b.cloth ? -1 : 1);
  const swatchOf = (role: RoleOf): Swatch => data.swatches.get(role.cloth) as Swatch;
  const patterned = room.scheme.roles
    .filter((role) => !isPlain(swatchOf(role)) && swatchOf(role).photo !== null)
    .sort(byMotif)
    .slice(0, 8);
  if (patterned.length === 0) return null;
  const plains = room.scheme.roles.filter(
    (role) => isPlain(swatchOf(role)) && swatchOf(role).photo !== null,
  );
  const top = sheet.margin.top + 35;
  const lengthMm = sheet.height > 285 ? 162 : 148;
  const swatches = patterned.map(swatchOf);
  const scale = scaleFor(swatches, lengthMm);
  const distanceX = sheet.width - sheet.margin.right - (PATCH * 4 + 1.4 * 3);
  const from = sheet.margin.left + 15;
  const lengths = strips(swatches, from, distanceX - 26, scale);
  const last = lengths.at(-1) as Strip;
  const end = last.x + last.width;
  const base = sheet.height - sheet.margin.bottom - 7;
  const shown = [...swatches, ...plains.map(swatchOf)].slice(0, 8);
  const pitch = shown.length > 7 ? 22.4 : 24;
  const rows = shown.map((s, at) => ({
    y: top + at * pitch,
    name: shortened(s.name, 18),
    words: plainFrom(s, units),
  }));
  const body =
    rulerSvg("cm", "left", from - 3, top, lengthMm, scale) +
    lengths.map((l, at) => lengthSvg(l, top, lengthMm, scale, book, `${prefix}-s${at}`)).join("") +
    rulerSvg("in", "right", end + 3, top, lengthMm, scale) +
    shown
      .map((s, at) => patchesSvg(s, distanceX, top + at * pitch, book, `${prefix}-p${at}`, units))
      .join("") +
    DISTANCES_M[units]
      .map(
        (m, at) =>
          `<text class="drawn" x="${r(distanceX + at * (PATCH + 1.4))}" y="${r(top - 2)}" font-size="3.5">${distance(m, units)}</text>`,
      )
      .join("") +
    ladderSvg(
      room.scheme.ladder,
      data.swatches,
      base,
      from,
      distanceX - 12,
      scale,
      book,
      units,
      prefix,
      spokenOf(room),
    );
  const description = lengths
    .map((l) => `${l.swatch.name}, ${repeatWords(l.swatch, units)}`)
    .join("; ");
  const svg = `<svg class="scale-picture" viewBox="0 0 ${sheet.width} ${sheet.height}" role="img" aria-labelledby="${prefix}-st ${prefix}-sd" xmlns="http://www.w3.org/2000/svg"><title id="${prefix}-st">Every pattern at one scale, one to ${scale}</title><desc id="${prefix}-sd">${escapeHtml(description)}</desc>${body}</svg>`;
  return {
    title: swatches.length > 2 ? "Large, middling, small" : "Large and small",
    standfirst: `Every length is at ${scaleWords(scale).replace(" their ", " its ")}, so they can be compared as they will hang.`,
    svg: { html: svg },
    captions: lengths.map((l) => ({
      x: l.x,
      y: top + lengthMm + 2.4,
      width: Math.max(l.width + 1, 24),
      name: l.swatch.name,
      words: marked(repeatWords(l.swatch, units)),
    })),
    rows,
    distanceX,
    note: ladderNote(room, units),
    noteY: Math.max(base - 24, (rows.at(-1)?.y ?? top) + 25),
  };
}
