import type { Wall } from "../../room/walls.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { capital, itemPhrase, type Language, listed, shortened } from "../words/phrases.ts";
import type { LeaderLabel } from "./leaders.ts";
import type { StandingItem } from "./placeItems.ts";

/** A name's letters on one line below a drawing; the board has it in full. */
const MOST_LETTERS = 26;

/** A label for each item that is seen, with the part of it on which the dot of its line may stand. */
export function labelsOf(
  data: ProjectData,
  items: readonly StandingItem[],
  language: Language,
): LeaderLabel[] {
  const seen = new Set<string>();
  return items.flatMap((standing): LeaderLabel[] => {
    const { item } = standing;
    if (seen.has(item.record.id)) return [];
    seen.add(item.record.id);
    const uses = item.kind
      .cloths(item.record.fields as never)
      .filter((u) => ["face", "cover", "paper", "panel"].includes(u.surface));
    const names = [
      ...new Set(
        uses
          .map((u) => data.swatches.get(u.cloth)?.name)
          .filter((n): n is string => n !== undefined),
      ),
    ];
    const object =
      item.kind.kind === "object"
        ? data.objects.get((item.record.fields as { object: string }).object)?.name
        : undefined;
    const { x, y, width, height } = standing;
    // What is clothed shows only above its cloth: a bed its headboard, a table nothing.
    const cloths = items.filter((i) => i.host === item);
    const bare = Math.min(...cloths.map((i) => i.y)) - y;
    if (object && cloths.length > 0)
      return bare < 60
        ? []
        : [
            {
              id: item.record.id,
              name: object,
              words: "",
              left: x,
              right: x + width * 0.16,
              top: y,
              foot: y + bare * 0.4,
            },
          ];
    // On drawn-back curtains the dot stands on the left one; on a blind on what hangs below its head.
    const curtains = item.kind.kind === "curtains";
    const left = curtains ? x + width * 0.05 : x;
    const runner = item.kind.kind === "runner";
    // A runner shows at its ends alone.
    const right = curtains ? x + width * 0.12 : runner ? x + 24 : x + width;
    // A chair's back is all cloth, where its foot may be open; a cushion on it would hide the back.
    const chair =
      item.kind.kind === "armchair" &&
      !items.some((i) => i !== standing && i.y < y + height * 0.5 && i.front > standing.front);
    const foot =
      chair || ["blind", "pelmet", "valance"].includes(item.kind.kind)
        ? y + height * 0.45
        : y + height;
    return [
      {
        id: item.record.id,
        name: shortened(object ?? listed(names), MOST_LETTERS),
        words: object ? "" : itemPhrase(item, language),
        left,
        right,
        top: y,
        foot,
      },
    ];
  });
}

/** Where there are too many cushions to be named one by one, all of them share one label. */
export function groupedCushions(
  labels: readonly LeaderLabel[],
  items: readonly StandingItem[],
  language: Language,
): LeaderLabel[] {
  const lying = items.filter((i) => i.item.kind.kind === "cushion");
  const isLying = (l: LeaderLabel): boolean => lying.some((i) => i.item.record.id === l.id);
  const theirs = labels.filter(isLying);
  const one = lying[0];
  if (!one || theirs.length < 3) return [...labels];
  const names = [...new Set(theirs.map((l) => l.name))];
  return [
    ...labels.filter((l) => !isLying(l)),
    {
      id: one.item.record.id,
      name: capital(one.item.kind.words[language].many),
      words: `in ${listed(names)}`,
      left: Math.min(...theirs.map((l) => l.left)),
      right: Math.max(...theirs.map((l) => l.right)),
      top: Math.min(...theirs.map((l) => l.top)),
      foot: Math.max(...theirs.map((l) => l.foot)),
    },
  ];
}

/** Papers on a wall are named too, where the paper is not covered: just above the skirting at its left part. */
export function paperLabels(
  data: ProjectData,
  room: RoomData,
  wall: Wall,
  height: number,
  language: Language,
): LeaderLabel[] {
  return room.plan.covers.flatMap((cover): LeaderLabel[] => {
    const face =
      cover.what === "paper"
        ? cover.faces.find(
            (f) => f.wall === wall.name && (f.part === "wall" || f.part === "breast"),
          )
        : undefined;
    const item = room.items.find((i) => i.record.id === cover.item);
    const cloth = (item?.record.fields as { cloth?: string } | undefined)?.cloth;
    if (!face || !item || !cloth) return [];
    const x = face.fromLeft.toMm();
    return [
      {
        id: cover.item,
        name: shortened(data.swatches.get(cloth)?.name ?? "", MOST_LETTERS),
        words: itemPhrase(item, language),
        left: x,
        right: x + Math.min(400, face.width.toMm() * 0.25),
        top: height * 0.4,
        foot: height * 0.8,
      },
    ];
  });
}
