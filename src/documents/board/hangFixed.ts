import { hang } from "./hang.ts";
import { CAPTION_MM, type Field, GAP_MM, type HangPiece, type HungPiece } from "./hangPiece.ts";

/** A rectangle on the field, millimetres from its upper left corner. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place that was asked for; without a size the piece keeps the one that it would have had. */
export interface FixedPlace {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly size: { readonly width: number; readonly height: number } | null;
}

/** Why a place cannot be taken. */
export interface PlaceFault {
  readonly id: string;
  readonly fault:
    | "leaves-the-field"
    | "meets-title"
    | "meets-another"
    | "leaves-no-room"
    | "shows-less";
  /** The other piece: the one that it meets, or for which no room is left. */
  readonly other: string | null;
}

export interface FixedMix {
  readonly hung: readonly HungPiece[];
  readonly faults: readonly PlaceFault[];
}

/** A piece may give way to three fifths of its size, and is never narrower than its caption. */
const LEAST_SCALE = 0.6;
const LEAST_WIDTH = 25;

/** A piece and the caption that hangs below it. */
const withCaption = (s: Spot): Spot => ({ ...s, height: s.height + CAPTION_MM - GAP_MM });

/** True where two pieces or their captions come nearer to each other than the gap. */
export function crowds(a: Spot, b: Spot): boolean {
  const [p, q] = [withCaption(a), withCaption(b)];
  const e = 0.01;
  return (
    p.x < q.x + q.width + GAP_MM - e &&
    q.x < p.x + p.width + GAP_MM - e &&
    p.y < q.y + q.height + GAP_MM - e &&
    q.y < p.y + p.height + GAP_MM - e
  );
}

/** True where a piece and its caption lie wholly on the field. */
export function onField(s: Spot, field: Field): boolean {
  const e = 0.01;
  return (
    s.x >= -e &&
    s.y >= -e &&
    s.x + s.width <= field.width + e &&
    s.y + s.height + CAPTION_MM <= field.height + e
  );
}

/**
 * The free place nearest to where a piece wants to hang. Places are tried at the edges of the field and of what hangs already, so
 * that edges are shared. Null where there is none.
 */
function nearestFree(
  wanted: Spot,
  taken: readonly Spot[],
  title: Spot | null,
  field: Field,
): Spot | null {
  const xs = [0, wanted.x, field.width - wanted.width];
  const ys = [0, wanted.y, field.height - CAPTION_MM - wanted.height];
  for (const t of taken) {
    xs.push(t.x, t.x + t.width + GAP_MM, t.x - GAP_MM - wanted.width, t.x + t.width - wanted.width);
    ys.push(
      t.y,
      t.y + t.height + CAPTION_MM,
      t.y - CAPTION_MM - wanted.height,
      t.y + t.height - wanted.height,
    );
  }
  if (title) {
    xs.push(title.x + title.width + GAP_MM);
    ys.push(title.y + title.height);
  }
  let best: Spot | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const x of xs) {
    for (const y of ys) {
      const spot = { ...wanted, x, y };
      const away = Math.hypot(x - wanted.x, y - wanted.y);
      const free =
        onField(spot, field) &&
        !taken.some((t) => crowds(t, spot)) &&
        !(title && x < title.x + title.width && y < title.y + title.height);
      if (free && (away < least - 1e-9 || (Math.abs(away - least) <= 1e-9 && best && y < best.y))) {
        best = spot;
        least = away;
      }
    }
  }
  return best;
}

/** Hangs a piece as near to its place as it can, smaller where it must be. */
function giveWay(
  wanted: HungPiece,
  taken: readonly Spot[],
  title: Spot | null,
  field: Field,
): HungPiece | null {
  for (let scale = 1; scale >= LEAST_SCALE - 1e-9; scale -= 0.1) {
    const width = Math.max(Math.min(LEAST_WIDTH, wanted.width), wanted.width * scale);
    const height = wanted.height * scale;
    // It shrinks towards the foot of its old place, so that it still stands on the datum.
    const spot = { x: wanted.x, y: wanted.y + wanted.height - height, width, height };
    const free = nearestFree(spot, taken, title, field);
    if (free) return { ...wanted, ...free };
  }
  return null;
}

/**
 * Hangs the mix with some places fixed: a fixed piece stands exactly where it is asked for and at the size asked for; the others
 * keep their computed places, or the nearest free ones where a fixed one is in the way, smaller by at most two fifths. Nothing ever
 * overlaps: a place that leaves the field, meets the title or an earlier one, is larger than its photograph shows, or leaves no room for another
 * piece is not followed, and is told.
 */
export function hangFixed(
  pieces: readonly HangPiece[],
  field: Field,
  title: { readonly width: number; readonly height: number },
  places: readonly FixedPlace[],
): FixedMix {
  const computed = hang(pieces, field, title);
  const titleSpot = title.height > 0 ? { x: 0, y: 0, ...title } : null;
  const faults: PlaceFault[] = [];
  const fixed: HungPiece[] = [];
  for (const place of places) {
    const own = computed.find((h) => h.id === place.id);
    if (!own) continue;
    const size = place.size ?? { width: own.width, height: own.height };
    const spot = { ...own, x: place.x, y: place.y, ...size };
    const most = pieces.find((p) => p.id === place.id)?.most;
    const met = fixed.find((p) => crowds(p, spot));
    if (!onField(spot, field))
      faults.push({ id: place.id, fault: "leaves-the-field", other: null });
    else if (titleSpot && spot.x < title.width && spot.y < title.height)
      faults.push({ id: place.id, fault: "meets-title", other: null });
    else if (most && (spot.width > most.width + 0.05 || spot.height > most.height + 0.05))
      faults.push({ id: place.id, fault: "shows-less", other: null });
    else if (met) faults.push({ id: place.id, fault: "meets-another", other: met.id });
    else fixed.push(spot);
  }
  for (;;) {
    const rest = computed
      .filter((c) => !fixed.some((p) => p.id === c.id))
      .sort((a, b) => b.width * b.height - a.width * a.height || (a.id < b.id ? -1 : 1));
    const placed: HungPiece[] = [...fixed];
    // What is in nobody's way keeps its place first; then the others, largest first.
    const moved = rest.filter((c) => fixed.some((p) => crowds(p, c)));
    placed.push(...rest.filter((c) => !moved.includes(c)));
    let stuck: HungPiece | null = null;
    for (const c of moved) {
      const free = giveWay(c, placed, titleSpot, field);
      if (!free) {
        stuck = c;
        break;
      }
      placed.push(free);
    }
    if (!stuck)
      return {
        hung: computed.map((c) => placed.find((p) => p.id === c.id) as HungPiece),
        faults,
      };
    const last = fixed.pop();
    if (!last) return { hung: computed, faults };
    faults.push({ id: last.id, fault: "leaves-no-room", other: stuck.id });
  }
}
