import type { ProjectQuantities } from "../quantityTypes.ts";

/** What an item of a room is called; its id where there is no such item. */
export type Called = (room: string, item: string) => string;

type Rooms = Pick<ProjectQuantities, "rooms">;
type Language = "en-US" | "en-GB";

/** How the items of a room are named in a text for the studio: title and kind in the words of its language, `Bay, curtains`. */
export function itemsInRoom({ rooms }: Rooms, language: Language): Called {
  const names = new Map(
    rooms.flatMap(({ plan, items }) =>
      items.map(({ record, kind }): [string, string] => [
        `${plan.room.id}/${record.id}`,
        `${record.title}, ${kind.words[language].one}`,
      ]),
    ),
  );
  return (room, item) => names.get(`${room}/${item}`) ?? item;
}

/** As `itemsInRoom`; where two rooms have items of one name, the room is said before it. */
export function itemsCalled(quantities: Rooms, language: Language): Called {
  const inRoom = itemsInRoom(quantities, language);
  const roomsWith = new Map<string, Set<string>>();
  for (const { plan, items } of quantities.rooms)
    for (const { record } of items) {
      const name = inRoom(plan.room.id, record.id);
      roomsWith.set(name, (roomsWith.get(name) ?? new Set()).add(plan.room.id));
    }
  const roomNames = new Map(
    quantities.rooms.map(({ plan }) => [plan.room.id, plan.room.fields.room]),
  );
  return (room, item) => {
    const name = inRoom(room, item);
    const several = (roomsWith.get(name)?.size ?? 0) > 1;
    return several ? `${roomNames.get(room) ?? room}: ${name}` : name;
  };
}
