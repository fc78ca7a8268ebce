import type { SeenSurface } from "../itemKind.ts";
import type { TableSkirtMade } from "./pieces.ts";
import type { TableSkirtFields } from "./schema.ts";

/** What is seen of a table skirt: its run by its drop, and its fitted top. */
export function tableSkirtSeen(fields: TableSkirtFields, made: TableSkirtMade): SeenSurface[] {
  const { plan } = made;
  if (!plan) return [];
  const count = fields.count ?? 1;
  const plain = { colour: null, object: null };
  const { table, skirt } = plan;
  const [w, d] = [table.width.toMm(), table.depth.toMm()];
  return [
    {
      surface: "face",
      cloth: fields.cloth,
      ...plain,
      areaMm2: skirt.finishedRun.toMm() * skirt.drop.toMm() * count,
    },
    ...(fields.top
      ? [
          {
            surface: "top",
            cloth: fields.top,
            ...plain,
            areaMm2: (table.round ? (Math.PI * w * w) / 4 : w * d) * count,
          },
        ]
      : []),
  ];
}

/** From the front it hides its table as far down as it hangs. */
export function tableSkirtHides(_: TableSkirtFields, made: TableSkirtMade): number {
  return made.plan ? made.plan.table.width.toMm() * made.plan.skirt.drop.toMm() : 0;
}
