import type { Made } from "../items/itemKind.ts";
import { commonFields } from "../room/commonFields.ts";
import type { FurnishedItem } from "../room/furnishRoom.ts";

/**
 * True for what is there and stays as it is: `existing: yes` on what hangs at a window or covers a wall. It is drawn and seen, and
 * nothing is bought or made for it. What one sits on is re-covered, so its cloth is bought.
 */
export function staysAsItIs(item: FurnishedItem): boolean {
  return commonFields(item.record).existing === true && item.zone !== "seat";
}

/** What an item comes to as far as anything is bought or made for it. */
export function boughtOf(item: FurnishedItem): Made {
  // What comes ready made is altered, and nothing is cut for it.
  if (commonFields(item.record)["second-hand"])
    return { ...item.made, cuts: [], materials: [], handbook: [], estimate: null };
  if (!staysAsItIs(item)) return item.made;
  return {
    ...item.made,
    cuts: [],
    materials: [],
    handbook: [],
    makingCounts: {},
    estimate: null,
    working: [],
    questions: [],
  };
}
