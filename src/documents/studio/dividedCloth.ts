import { boltsDivided, togetherWords } from "../../quantities/text/togetherWords.ts";
import type { ProjectData } from "../projectData.ts";

/** A maker's name as the studio knows it; empty of none. */
export function makerName(data: ProjectData, maker: string | null): string {
  return maker ? (data.studio.fields.makers?.[maker]?.name ?? maker) : "";
}

/**
 * How a cloth that is bought once for several makers is divided: `one whole bolt of 30 m: 1.06 m to Bench, 0.63 m to Frame; 28.31 m
 * over`. Empty where each maker's is bought by itself, or one alone has it.
 */
export function dividedWords(data: ProjectData, cloth: string): string {
  const named = (maker: string): string => makerName(data, maker);
  const bolt = data.money.bolts.find((b) => b.taken && b.cloth === cloth);
  const shared = data.quantities.together.find((each) => each.cloth === cloth);
  const makers = new Set(bolt?.divided.cut.flat().map(({ maker }) => maker));
  if (bolt && makers.size > 1) return boltsDivided(bolt.divided, bolt.unit, named);
  return shared ? togetherWords(shared, named) : "";
}
