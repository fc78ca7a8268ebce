import Fraction from "fraction.js";
import type { ClothFacts, ItemContext, ItemKind, ObjectFacts } from "../items/itemKind.ts";
import type { ItemRecord, StudioRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { type AllowanceSources, lookUpAllowance, type UsedAllowance } from "./allowances.ts";
import { commonFields } from "./commonFields.ts";
import { hangsOn } from "./hangsOn.ts";
import { type RoomPlan, runsFor } from "./roomPlan.ts";

export interface ContextInput {
  readonly item: ItemRecord;
  readonly kind: ItemKind;
  readonly plan: RoomPlan;
  readonly studio: StudioRecord | null;
  readonly maker: string | null;
  readonly cloth: (id: string) => ClothFacts | null;
  readonly object: (id: string) => ObjectFacts | null;
}

/** What an item's arithmetic may look at, and the allowances that it asked for on the way. */
export interface RecordingContext {
  readonly context: ItemContext;
  /** Each allowance once, in the order in which it was first asked for. */
  readonly used: () => readonly UsedAllowance[];
}

/** Builds an item's context; an allowance that its kind does not declare is a programmer's mistake and throws. */
export function itemContext(input: ContextInput): RecordingContext {
  const { item, kind, plan, studio } = input;
  const units = studio?.fields.units ?? "inches";
  const asked = new Map<string, UsedAllowance>();
  const sources: AllowanceSources = {
    kind: kind.kind,
    fields: item.fields as Readonly<Record<string, unknown>>,
    maker: input.maker,
    studio,
    units,
  };
  const look = (name: string): UsedAllowance => {
    const before = asked.get(name);
    if (before) return before;
    const definition = kind.allowances[name];
    if (!definition) throw new Error(`The kind ${kind.kind} declares no allowance called ${name}`);
    const found = lookUpAllowance(name, definition, sources);
    asked.set(name, found);
    return found;
  };
  const context: ItemContext = {
    units,
    cloth: input.cloth,
    object: input.object,
    host: hostOf(input),
    paint: studio?.fields.paint
      ? {
          coverage: studio.fields.paint.coverage ?? null,
          tins: studio.fields.paint.tins ?? null,
          price: studio.fields.paint.price ?? null,
        }
      : null,
    window: plan.placements.get(item.id)?.window ?? null,
    hangsOn: hangsOn(item, plan, (id) => input.object(id)?.name ?? null),
    roomHeight: plan.height,
    floor: plan.floor,
    isCeilingPapered: plan.covers.some(
      (cover) => cover.onCeiling && cover.what === "paper" && cover.item !== item.id,
    ),
    runs: (on) => runsFor(plan, item, on),
    length: (name) => {
      const { value } = look(name);
      if (!(value instanceof Length)) throw new Error(`The allowance ${name} is no length`);
      return value;
    },
    ratio: (name) => {
      const { value } = look(name);
      if (!(value instanceof Fraction)) throw new Error(`The allowance ${name} is no ratio`);
      return value;
    },
    count: (name) => {
      const { value } = look(name);
      if (typeof value !== "number") throw new Error(`The allowance ${name} is no count`);
      return value;
    },
    place: item.place,
  };
  return { context, used: () => [...asked.values()] };
}

/** The card of the object that an item lies on: the item's own, where it is placed in the room, else the card that is named. */
function hostOf({ item, plan, object }: ContextInput): ObjectFacts | null {
  const on = plan.placements.get(item.id)?.on;
  if (!on) return null;
  const host = plan.room.items.find((each) => each.id === on);
  const card = host ? commonFields(host).object : on;
  return card === undefined ? null : object(card);
}
