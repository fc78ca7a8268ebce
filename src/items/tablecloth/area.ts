import { ovalArea } from "../common/flat/oval.ts";
import type { SeenSurface } from "../itemKind.ts";
import type { TableclothMade } from "./pieces.ts";
import type { TableclothFields } from "./schema.ts";

/** All of a tablecloth is seen: its top and what hangs. */
export function tableclothSeen(fields: TableclothFields, made: TableclothMade): SeenSurface[] {
  const { plan } = made;
  if (!plan) return [];
  const [w, d] = [plan.finished[0].toMm(), plan.finished[1].toMm()];
  const { table } = plan;
  const flat = table.oval
    ? ovalArea([table.width, table.depth], plan.drop)
    : table.round
      ? (Math.PI * w * w) / 4
      : w * d;
  const areaMm2 = flat * (fields.count ?? 1);
  return [{ surface: "face", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}

/** From the front it hides its table as far down as it hangs. */
export function tableclothHides(_: TableclothFields, made: TableclothMade): number {
  return made.plan ? made.plan.table.width.toMm() * made.plan.drop.toMm() : 0;
}
