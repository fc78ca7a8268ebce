import { Length } from "../units/length.ts";
import type { RoomMaterial } from "./quantityTypes.ts";

/** A card's length that is bought by its name: by the yard or metre, or rolls at their length; nothing of a roll of unknown length. */
export function materialLength(material: RoomMaterial, roll: Length | null): Length {
  if (material.unit === "metre") return Length.mm(material.amount.mul(1000));
  if (material.unit === "yard") return Length.yards(material.amount);
  return material.unit === "roll" && roll ? roll.times(material.amount) : Length.zero;
}
