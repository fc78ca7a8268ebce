import type { HeightZone, SeenSurface } from "../itemKind.ts";
import type { ObjectMade } from "./pieces.ts";
import type { ObjectItemFields } from "./schema.ts";

/** What is seen of an object: a rug from above, all else from the front. Nothing where its size is not known. */
export function objectSeen(fields: ObjectItemFields, made: ObjectMade): SeenSurface[] {
  const facts = made.facts;
  const other = facts?.shape === "rug" ? (facts.depth ?? facts.height) : facts?.height;
  if (!facts?.width || !other) return [];
  return [
    {
      surface: "object",
      cloth: null,
      colour: null,
      object: fields.object,
      areaMm2: facts.width.toMm() * other.toMm() * made.count,
    },
  ];
}

/** A rug lies on the floor, what hangs is on the wall, seats are at seat height, what stands on another thing at the table's. */
export function objectZone(fields: ObjectItemFields, made?: ObjectMade): HeightZone {
  const at = fields.at;
  if (made?.facts?.shape === "rug") return "floor";
  if (made?.hangs) return "wall";
  if (typeof at === "object" && "on" in at) return "table";
  switch (made?.facts?.shape) {
    case "chair":
    case "seat":
    case "bed":
      return "seat";
    case "table":
    case "lamp":
    case "chest":
      return "table";
    case "stove":
    case "picture":
    case "mirror":
      return "wall";
    default:
      return "floor";
  }
}
