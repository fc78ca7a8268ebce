import type { Binding } from "../../drawing/binding.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";

/** The cloth of one surface of an item: its own, else the item's cover or face. */
function clothOf(item: ItemData, surface: string): string | null {
  const uses = item.kind.cloths(item.record.fields as never);
  const own = uses.find((u) => u.surface === surface);
  const main = uses.find(
    (u) => u.surface === "cover" || u.surface === "face" || u.surface === "paper",
  );
  return (own ?? (surface === "lining" || surface === "welt" ? undefined : main))?.cloth ?? null;
}

function clothBinding(data: ProjectData, cloth: string, scale: number, book: PictureBook): Binding {
  const swatch = data.swatches.get(cloth);
  if (!swatch) return null;
  const tile = book.tile(swatch, scale);
  if (tile) return { tile, averageHex: swatch.average ?? "#ddd8cc" };
  return swatch.average ? { hex: swatch.average } : null;
}

/**
 * What each surface of a room's drawing is filled with. Surfaces are named `item/surface`; `wall` is the wall's own colour. Tiles are
 * made for a drawing at one to `scale`.
 */
export function roomBindings(
  data: ProjectData,
  room: RoomData,
  scale: number,
  book: PictureBook,
): (surface: string) => Binding {
  return (name) => {
    if (name === "wall") return { hex: room.wallColour ?? "#ffffff" };
    const [id, surface] = name.split("/");
    const item = room.items.find((i) => i.record.id === id);
    if (!item || surface === undefined) return null;
    const cloth = clothOf(item, surface);
    if (cloth) return clothBinding(data, cloth, scale, book);
    if (item.kind.kind === "object") {
      const swatch = data.objects.get((item.record.fields as { object: string }).object);
      const shown = swatch?.photo
        ? book.whole(swatch, (item.made as unknown as { widthMm?: number }).widthMm ?? 60)
        : null;
      if (shown && swatch) return { href: shown.href, averageHex: swatch.average ?? "#cccccc" };
      return swatch?.average ? { hex: swatch.average } : null;
    }
    return null;
  };
}
