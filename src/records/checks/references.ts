import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { slug } from "../../fields/slug.ts";
import { nearest } from "../../fields/suggest.ts";
import { sameWord } from "../../fields/vocabulary.ts";
import { wordMeant } from "../../fields/wallsField.ts";
import { type Card, complain } from "../reading/card.ts";
import type { Leaf } from "../reading/collectLeaves.ts";
import { calledKey, type Known, type RoomNames, type Use } from "./known.ts";

/** What came of looking after each name that a file points at. */
export interface References {
  readonly diagnostics: readonly Diagnostic[];
  readonly uses: readonly Use[];
}

interface Outcome {
  readonly diagnostic?: Diagnostic;
  readonly use?: Use;
}

const CLOTH_LIKE = new Set(["a cloth", "a lining", "an interlining", "a trim", "a wallcovering"]);

/** Words for having none of something. */
const NOTHING = /^(none|no|without)$/i;

const isSort = (what: string): what is "cloth" | "object" | "maker" | "supplier" =>
  ["cloth", "object", "maker", "supplier"].includes(what);

function unknown(
  card: Card,
  leaf: Leaf,
  code: string,
  what: string,
  names: Iterable<string>,
  otherwise: string,
  called?: Known["called"],
): Outcome {
  const name = leaf.node.text.trim();
  // What stands on documents is often written where the name of its file or its key is wanted.
  const meant = isSort(what) ? called?.get(calledKey(what, name)) : undefined;
  const near =
    meant ?? nearest(name, names) ?? [...names].find((other) => slug(other) === slug(name)) ?? null;
  return {
    diagnostic: complain(
      card,
      leaf.path,
      {
        code,
        message: `There is no ${what} called “${name}”.`,
        actual: name,
        expected: near ?? null,
        hint: near ? `Did you mean ${near}?` : otherwise,
      },
      leaf.node.spot,
    ),
  };
}

function list(names: readonly string[]): string {
  return names.length === 0 ? "" : ` There are: ${names.join(", ")}.`;
}

function ofLibrary(card: Card, leaf: Leaf, known: Known, name: string): Outcome {
  const ref = leaf.notes.ref as string;
  const either = ref === "an object or a cloth";
  if (CLOTH_LIKE.has(ref) || either) {
    if (known.cloths.has(name)) return { use: { library: "cloths", id: name } };
    if (!either)
      return unknown(
        card,
        leaf,
        "cloth-unknown",
        "cloth",
        known.cloths,
        ref !== "a cloth" && NOTHING.test(name)
          ? "Take the line out: what is not written is not made."
          : `Write its card: cloths/${name}.md`,
        known.called,
      );
  }
  if (known.objects.has(name)) return { use: { library: "objects", id: name } };
  if (!either)
    return unknown(
      card,
      leaf,
      "object-unknown",
      "object",
      known.objects,
      `Write its card: objects/${name}.md`,
      known.called,
    );
  return unknown(
    card,
    leaf,
    "anchor-unknown",
    "object or cloth",
    [...known.objects, ...known.cloths],
    `Write its card: objects/${name}.md or cloths/${name}.md`,
  );
}

function ofWindow(card: Card, leaf: Leaf, room: RoomNames, known: Known, name: string): Outcome {
  if (room.windows.includes(name)) return {};
  const standing =
    room.items.some((item) => item.id === name || item.title === name) || known.objects.has(name);
  const how = room.walls?.includes(name)
    ? `For a wall write { wall: ${name} }.`
    : standing
      ? `For another item or an object write { on: ${name} }.`
      : room.windows.length === 0
        ? "Write the window below its wall, in walls."
        : `Name one of the room's windows.${list(room.windows)}`;
  return unknown(card, leaf, "window-unknown", "window", room.windows, how);
}

function itemsTitled(room: RoomNames, name: string, self: number | null): RoomNames["items"] {
  return room.items.filter((item) => slug(item.title) === slug(name) && item.index !== self);
}

/**
 * An item of the room by its id, its object's card or its title, as `findItem` of the placed room finds it; null where none or
 * several answer. An item that names what it lies on never means itself: `self` is its index.
 */
export function itemCalled(
  room: RoomNames,
  name: string,
  self: number | null,
): RoomNames["items"][number] | null {
  const byId = room.items.find((item) => item.id === name);
  if (byId) return byId;
  const byObject = room.items.filter((item) => item.kind === "object" && item.title === name);
  if (byObject.length === 1) return byObject[0] ?? null;
  const byTitle = itemsTitled(room, name, self);
  return byTitle.length === 1 ? (byTitle[0] ?? null) : null;
}

function ofItem(card: Card, leaf: Leaf, room: RoomNames, known: Known, name: string): Outcome {
  const self = leaf.path[0] === "items" && typeof leaf.path[1] === "number" ? leaf.path[1] : null;
  if (itemCalled(room, name, self)) return {};
  const alike = itemsTitled(room, name, self);
  const [first, second] = alike;
  if (first && second) {
    if (first.id === second.id) return {};
    const ids = alike.map((item) => item.id).join(", ");
    return {
      diagnostic: complain(
        card,
        leaf.path,
        {
          code: "item-unclear",
          message: `Several items are called “${name}”.`,
          actual: name,
          expected: ids,
          hint: `Name one by its kind and title: ${ids}.`,
        },
        leaf.node.spot,
      ),
    };
  }
  if (known.objects.has(name)) {
    return {
      use: { library: "objects", id: name },
      diagnostic: complain(
        card,
        leaf.path,
        {
          code: "object-not-placed",
          severity: "warning",
          message: `“${name}” is an object of the library, but does not stand in this room.`,
          actual: name,
          hint: `Add it to the items: - object: ${name}`,
        },
        leaf.node.spot,
      ),
    };
  }
  const names = [...room.items.map((item) => item.id), ...known.objects];
  return unknown(
    card,
    leaf,
    "item-unknown",
    "item or object",
    names,
    `Name an item by its kind and title.${list(room.items.map((item) => item.id))}`,
  );
}

function ofPicture(card: Card, leaf: Leaf, known: Known, name: string): Outcome {
  // A path is refused by its field already.
  if (/[/\\]/.test(name)) return {};
  const folder = card.file.split("/").slice(0, -1).join("/");
  const path = folder === "" ? name : `${folder}/${name}`;
  if (known.present.has(path)) return {};
  const beside = [...known.present]
    .filter((other) => other.split("/").slice(0, -1).join("/") === folder && !other.endsWith(".md"))
    .map((other) => other.split("/").at(-1) as string);
  const near =
    beside.find(
      (other) => other.normalize("NFC").toLowerCase() === name.normalize("NFC").toLowerCase(),
    ) ?? nearest(name, beside);
  return {
    diagnostic: complain(
      card,
      leaf.path,
      {
        code: "picture-missing",
        message: `There is no picture “${name}” beside this file.`,
        actual: name,
        expected: near,
        hint: near
          ? `Did you mean ${near}?`
          : "Put the picture in the same folder, or take the line out until you have it.",
      },
      leaf.node.spot,
    ),
  };
}

/** True where the file that a name means is there and could not be read at all: that is said of the file itself. */
function isUnreadable(card: Card, ref: string, name: string, known: Known): boolean {
  const folder = card.file.split("/").slice(0, -1).join("/");
  const isRead =
    ref === "a room" ? known.rooms?.has(name) : known.cloths.has(name) || known.objects.has(name);
  const paths =
    ref === "a room"
      ? [`${folder}/${name}.md`]
      : [
          ...(ref === "an object" ? [] : [`cloths/${name}.md`]),
          ...(CLOTH_LIKE.has(ref) ? [] : [`objects/${name}.md`]),
        ];
  return !isRead && paths.some((path) => known.present.has(path));
}

function look(card: Card, leaf: Leaf, known: Known): Outcome {
  const ref = leaf.notes.ref as string;
  const name = ref === "a picture" ? leaf.node.text.trim() : leaf.node.text.trim().normalize("NFC");
  const { room } = known;
  const isCard = CLOTH_LIKE.has(ref) || ref === "an object" || ref === "an object or a cloth";
  if ((isCard || ref === "a room") && isUnreadable(card, ref, name, known)) return {};
  if (isCard) return ofLibrary(card, leaf, known, name);
  if (ref === "a picture") return ofPicture(card, leaf, known, name);
  if (ref === "a maker" && known.makers && !known.makers.has(name))
    return unknown(
      card,
      leaf,
      "maker-unknown",
      "maker",
      known.makers,
      `Add it to the makers in studio.md.${list([...known.makers])}`,
      known.called,
    );
  if (ref === "a supplier" && known.suppliers && !known.suppliers.has(name))
    return unknown(
      card,
      leaf,
      "supplier-unknown",
      "supplier",
      known.suppliers,
      `Add it to the suppliers in studio.md.${list([...known.suppliers])}`,
      known.called,
    );
  if (ref === "a finding" && known.findings && !known.findings.includes(name))
    return unknown(
      card,
      leaf,
      "finding-unknown",
      "finding",
      known.findings,
      "Copy the line that the finding prints.",
    );
  if (ref === "a room" && known.rooms && !known.rooms.has(name))
    return unknown(
      card,
      leaf,
      "room-unknown",
      "room",
      known.rooms,
      `Write its file beside this one: ${name}.md`,
    );
  if (!room) return {};
  if (ref === "a window") return ofWindow(card, leaf, room, known, name);
  if (ref === "an item") return ofItem(card, leaf, room, known, name);
  // `walls` and the like stand where one wall's name may stand too; a slip in such a word is told as one.
  const words = leaf.notes.words ?? [];
  const isWord =
    sameWord(name.toLowerCase(), words) !== undefined || wordMeant(name, words) !== undefined;
  if (ref === "a wall" && room.walls && !isWord && !room.walls.includes(name))
    return unknown(
      card,
      leaf,
      "wall-unknown",
      "wall",
      room.walls,
      `Name one of the room's walls.${list(room.walls)}`,
    );
  return {};
}

/** Looks after every name that a file points at: is it there, and which cards of the library does the file use. */
export function checkReferences(card: Card, leaves: readonly Leaf[], known: Known): References {
  const outcomes = leaves
    .filter((leaf) => leaf.notes.ref !== undefined)
    .map((leaf) => look(card, leaf, known));
  return {
    diagnostics: outcomes.flatMap((outcome) => outcome.diagnostic ?? []),
    uses: outcomes.flatMap((outcome) => outcome.use ?? []),
  };
}
