import type { Wall } from "../../room/walls.ts";
import { capital } from "../../units/capital.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { itemPhrase, type Language, listed } from "../words/phrases.ts";
import { beneath } from "./beneath.ts";
import { clothSpots } from "./clothSpots.ts";
import { factsOf } from "./itemView.ts";
import type { LeaderLabel } from "./leaderRoutes.ts";
import type { StandingItem } from "./standingItem.ts";

/** More letters than this in the names of grouped cushions, and only their number is said. */
const MOST_GROUPED = 56;

/** The surfaces that an item's name stands for. */
const NAMED: ReadonlySet<string> = new Set(["face", "cover", "paper", "panel"]);

/** True where an object is named: it brings colours of its own. Rugs are named on the plan, where they are seen. */
function isNamed(item: StandingItem["item"]): boolean {
  const facts = factsOf(item);
  return facts !== null && facts.shape !== "rug" && facts.hasPhoto;
}

/**
 * A label for each cloth that is seen, and for each object that brings colours of its own, with the places where the dot of its line
 * may stand; what hosts cushions is named where there is room. `clear` is the air about a dot in millimetres of the wall.
 */
export function labelsOf(
  data: ProjectData,
  room: RoomData,
  items: readonly StandingItem[],
  language: Language,
  clear: number,
): LeaderLabel[] {
  const usesOf = (item: StandingItem["item"]) =>
    item.kind.cloths(item.record.fields as never).filter((u) => NAMED.has(u.surface));
  const spots = clothSpots(
    items,
    ({ item }) => {
      const cloths = new Set(usesOf(item).map((u) => u.cloth));
      const uses = item.kind.cloths(item.record.fields as never);
      // A piece without a cloth of its own is in the cover's.
      return (surface) => {
        const own = uses.find((u) => u.surface === surface);
        return surface !== "welt" && (own === undefined || cloths.has(own.cloth));
      };
    },
    clear,
  );
  const seen = new Set<string>();
  return items.flatMap(({ item }): LeaderLabel[] => {
    const { id } = item.record;
    const places = spots.get(id);
    if (seen.has(id) || !places) return [];
    seen.add(id);
    const names = [
      ...new Set(
        usesOf(item)
          .map((u) => data.swatches.get(u.cloth)?.name)
          .filter((n): n is string => n !== undefined),
      ),
    ];
    const object =
      item.kind.kind === "object"
        ? data.objects.get((item.record.fields as { object: string }).object)?.name
        : undefined;
    const isHost = items.some((i) => i !== undefined && i.on === item);
    if (item.kind.kind === "object" && !isNamed(item) && !isHost) return [];
    return [
      {
        id,
        name: object ?? listed(names),
        words: object ? "" : itemPhrase(item, language),
        ...places,
        own: new Set([id]),
        beneath: beneath(room, item, items),
        ...(object && !isNamed(item) ? { ifRoom: true as const } : {}),
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
      words: `in ${listed(names).length > MOST_GROUPED ? `${names.length} cloths` : listed(names)}`,
      left: Math.min(...theirs.map((l) => l.left)),
      right: Math.max(...theirs.map((l) => l.right)),
      spotAt: (x) => theirs.map((l) => l.spotAt(x)).find((y) => y !== null) ?? null,
      own: new Set(theirs.flatMap((l) => [...l.own])),
      beneath: new Set(theirs.flatMap((l) => [...l.beneath])),
    },
  ];
}

/** Papers on a wall are named too, where the paper is not covered: low on the paper, beside what stands before it. */
export function paperLabels(
  data: ProjectData,
  room: RoomData,
  wall: Wall,
  height: number,
  items: readonly StandingItem[],
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
        name: data.swatches.get(cloth)?.name ?? "",
        words: itemPhrase(item, language),
        left: x,
        right: x + face.width.toMm(),
        spotAt: (at) => {
          const y = height * 0.72;
          const covered = items.some(
            (i) => at > i.x - 30 && at < i.x + i.width + 30 && y > i.y && y < i.y + i.height,
          );
          return at > x + 20 && at < x + face.width.toMm() - 20 && !covered ? y : null;
        },
        own: new Set(),
        beneath: new Set(),
      },
    ];
  });
}
