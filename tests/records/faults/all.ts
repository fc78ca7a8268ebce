import { DAYS } from "./days.ts";
import type { Fault } from "./fault.ts";
import { FILES } from "./files.ts";
import { KEYS } from "./keys.ts";
import { MEASURES } from "./measures.ts";
import { NAMES } from "./names.ts";
import { STUDIO_CARD } from "./studioCard.ts";
import { SUMS } from "./sums.ts";

/** Every fault, by what it is about. */
export const FAULTS: readonly Fault[] = [
  ...MEASURES,
  ...NAMES,
  ...DAYS,
  ...KEYS,
  ...SUMS,
  ...STUDIO_CARD,
  ...FILES,
];
