import type { Tile } from "../../drawing/binding.ts";
import type { Finding } from "../../scheme/finding.ts";
import type { Ladder } from "../../scheme/ladder.ts";
import { layingOf, shownMm } from "../../swatches/period.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { partAboutMotif } from "../pictures/aboutMotif.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { RoomData } from "../projectData.ts";
import { escapeHtml, type Markup, marked } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { fromDoor } from "./acrossTheRoom.ts";
import { tileImages } from "./cuttings.ts";

const r = svgNumber;

function rounded(mm: number, units: UnitSystem): string {
  const exact = Length.mm((Math.round(mm * 100) / 100).toString());
  if (units === "inches") return printLength(exact.nearest(Length.inches("0.125")), units);
  return printLength(exact.nearest(Length.mm(mm < 100 ? 1 : 5)), units);
}

/** A mug, nine centimetres high, drawn at one to `scale`, standing on (x, base): a size that every hand knows. */
function mug(x: number, base: number, scale: number): string {
  const h = 90 / scale;
  const w = 78 / scale;
  return `<path d="M${r(x)} ${r(base - h)}q${r(w * 0.03)} ${r(h * 0.7)} ${r(w * 0.16)} ${r(h)}h${r(w * 0.68)}q${r(w * 0.13)} ${r(-h * 0.3)} ${r(w * 0.16)} ${r(-h)}z" fill="#fff" stroke="#23282e" stroke-width=".3" stroke-linejoin="round"/><ellipse cx="${r(x + w / 2)}" cy="${r(base - h)}" rx="${r(w / 2)}" ry="${r(h * 0.07)}" fill="#fff" stroke="#23282e" stroke-width=".3"/><path d="M${r(x + w * 0.97)} ${r(base - h * 0.78)}c${r(w * 0.42)} ${r(-h * 0.06)} ${r(w * 0.36)} ${r(h * 0.5)} ${r(-w * 0.05)} ${r(h * 0.46)}" fill="none" stroke="#23282e" stroke-width=".3"/>`;
}

/** The words beside the ladder. */
export type LadderNote = { readonly plain: string; readonly close: Markup; readonly door: string };

/** What is said of rungs that stand too close, and was not overruled. */
function closeRungs(room: RoomData): Finding[] {
  return room.scheme.findings.filter((f) => f.code === "rungs-close" && f.accepted === null);
}

/** The client reads of them only where the studio publishes it. */
function isPublished(room: RoomData): boolean {
  return room.record.fields.publish?.includes("rungs-close") ?? false;
}

/** Pairs of rungs that a published finding speaks of: the red of a ratio comes from the finding itself. */
export function spokenOf(room: RoomData): ReadonlySet<string> {
  return new Set(isPublished(room) ? closeRungs(room).map((f) => f.of.join(" ")) : []);
}

/** The words beside the ladder: what is right in it, and what is not only where that is published. */
export function ladderNote(room: RoomData, units: UnitSystem): LadderNote | null {
  const { steps } = room.scheme.ladder;
  const door = fromDoor(room, units);
  const note = (plain: string, close = ""): LadderNote | null => ({
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

/** A motif as it is photographed, else off a tile of the cloth; null where the photograph shows less than the motif. */
function motifPicture(
  swatch: Swatch,
  motifMm: number,
  scale: number,
  book: PictureBook,
): { href: string } | { tile: Tile; ground: string | null } | null {
  const shown = shownMm(swatch.photo);
  if (swatch.photo?.showsMm && shown && motifMm <= Math.min(shown.across, shown.up)) {
    const part = partAboutMotif(swatch.photo, swatch.photo.showsMm, {
      width: motifMm,
      height: motifMm,
    });
    const picture = book.crop(swatch, part, motifMm / scale);
    if (picture) return { href: picture.href };
  }
  const tile = layingOf(swatch) === "whole" ? book.tile(swatch, scale) : null;
  return tile ? { tile, ground: swatch.average } : null;
}

/** The motifs in circles of their own size, standing on one line from the largest down, and a mug to compare them with. */
export function ladderSvg(
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
    const motif = swatch ? motifPicture(swatch, rung.motifMm, scale, book) : null;
    const box = {
      x: cx - radius,
      y: cy - radius,
      width: radius * 2,
      height: radius * 2,
    };
    out += `<clipPath id="${prefix}-l${at}"><circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}"/></clipPath>`;
    out +=
      motif === null
        ? `<circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}" fill="${swatch?.average ?? "#fff"}"/>`
        : `<g clip-path="url(#${prefix}-l${at})">${"href" in motif ? `<image href="${escapeHtml(motif.href)}" x="${r(box.x)}" y="${r(box.y)}" width="${r(box.width)}" height="${r(box.height)}" preserveAspectRatio="xMidYMid slice"/>` : tileImages(motif.tile, scale, box, cx, cy, motif.ground)}</g>`;
    out += `<circle cx="${r(cx)}" cy="${r(cy)}" r="${r(radius)}" fill="none" stroke="#23282e" stroke-width=".25"${swatch?.photo === null ? ' stroke-dasharray="1.6 1"' : ""}/>`;
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
