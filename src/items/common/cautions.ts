import { PRACTICE } from "../../fields/allowance.ts";

/** Codes that a kind of item gives where work can hurt someone. */
export const CAUTION_CODES = [
  "cords",
  "fire",
  "lead-paint",
  "heavy-hanging",
  "small-parts",
  "lamp-heat",
  "way-out",
  "long-cloths",
  "sleeping-infants",
] as const;
export type CautionCode = (typeof CAUTION_CODES)[number];

export interface Caution {
  readonly code: CautionCode;
  /** The run-in bold word. */
  readonly word: string;
  readonly text: string;
  /** Where the reminder comes from; for the studio's own file, not for print. */
  readonly source: string;
}

/** Ends every caution: this program judges nothing. */
export const DEFERENCE =
  "Local codes and licensed or tested practice decide; this is a reminder, not a judgement of compliance.";

const COMMON: Readonly<
  Record<CautionCode, { readonly word: string; readonly text: string; readonly source: string }>
> = {
  cords: {
    word: "Cords.",
    text: "Cords and chains can strangle a young child. Cordless is best in every home. Where there is a cord, keep its end out of reach, hold every loop fast to the wall with the safety device that came with it, shroud or restrain the cords at the back of a blind, and keep cots, beds and furniture that can be climbed away from it.",
    source:
      "16 CFR part 1120 (inner cords, labels); EN 13120 as explained by trading standards offices",
  },
  fire: {
    word: "Fire.",
    text: "Rules on how cloth and fillings burn differ by country and by setting, and they change. Ask the supplier for the test evidence of this cloth and of what lies under it, and keep it with the order. Keep cloth off heaters and away from open flame, at the distance that the heater's maker states.",
    source:
      "16 CFR part 1640; SI 1988/1324 as amended; NFPA 701; BS 5867: reminders only, heat clearance common practice, no source",
  },
  "lead-paint": {
    word: "Old paint.",
    text: "Paint in older homes may hold lead (in the United States, homes built before 1978). If in doubt stop and have it tested before anything is sanded, scraped or stripped; never sand or burn old paint. Paid work that disturbs more than a small area may need a certified firm.",
    source: "40 CFR 745.83, U.S. Environmental Protection Agency",
  },
  "heavy-hanging": {
    word: "Heavy piece.",
    text: "A competent fixer looks at the wall, chooses the fixings and rates them. A weight that is stated is the one that was given; nothing here is advice on a fixing or its load.",
    source:
      "county arts guidance on care and display of art; weight rule common practice, no source",
  },
  "small-parts": {
    word: "Small parts.",
    text: "Small parts: choking hazard for young children. Sew hem weights into closed pockets, never loose, and free of lead; leave weights, buttons and beads out where small children can reach them.",
    source: PRACTICE,
  },
  "lamp-heat": {
    word: "Heat of the lamp.",
    text: "A lamp can scorch or light the cloth round it. Keep every part of the shade as far from the lamp as the lamp's and the fitting's makers state, never pass the wattage that they allow, and write that figure on the shade. A lamp that stays cool is the safer choice. Fittings and flex are for a licensed electrician.",
    source: PRACTICE,
  },
  "way-out": {
    word: "Way out.",
    text: "A curtain at a door must not hide it, catch in it or trail where people walk. Ask whether the door is a way out in a fire before a curtain is hung there.",
    source: PRACTICE,
  },
  "long-cloths": {
    word: "Long cloths.",
    text: "A small child can pull a hanging cloth down with all that stands on it, and anyone can trip on cloth that lies on the floor. Where small children are, keep it short or clip it fast; leave no loose cord, tape or fringe that could go round a neck.",
    source: PRACTICE,
  },
  "sleeping-infants": {
    word: "Sleeping infants.",
    text: "Loose covers, throws, quilts and pillows do not belong where an infant sleeps; follow the safe-sleep advice of the local health service.",
    source: "public health advice on safe sleep, from memory",
  },
};

const CANDLES =
  "Candles and lamps near hanging cloth stand in holders that cannot tip, clear of every edge, and are never left alone.";
const RE_COVERING =
  "Re-covering counts as making: ask the upholsterer to confirm in writing which rule applies, that it is met, and that the label is fixed where one is asked for.";

/** What one kind of item adds, before the deference. */
const MORE: Readonly<Partial<Record<CautionCode, Readonly<Record<string, string | undefined>>>>> = {
  fire: {
    armchair: RE_COVERING,
    sofa: RE_COVERING,
    "dining-chair": RE_COVERING,
    "drop-in-seat": RE_COVERING,
    ottoman: RE_COVERING,
    headboard: RE_COVERING,
    tablecloth: CANDLES,
    "table-skirt": CANDLES,
    runner: CANDLES,
    throw: "Keep it off electric blankets and heaters, unless their makers allow it.",
    coverlet: "Keep it off electric blankets and heaters, unless their makers allow it.",
    "seat-pad": "In some countries seat pads and their fillings fall under the furniture rules.",
    "panelled-wall":
      "Cloth stretched on a wall is a wall lining: in many places it has rules of its own, and in rooms open to the public always.",
    cushion:
      "In some countries scatter cushions and their fillings fall under the furniture rules.",
  },
  cords: {
    tieback:
      "A tie-back is a loop too: let it be unhooked at both ends, and keep it away from cots and beds.",
  },
  "lead-paint": {
    wallpaper: "Stripping old paper disturbs the paint beneath it.",
    "panelled-wall":
      "Fixing panels and mouldings to a painted wall drills, sands or breaks its paint.",
  },
};

/** What is said to those who live with the thing, where the words above tell a maker what to do. */
const TO_CLIENT: Readonly<Partial<Record<CautionCode, string>>> = {
  fire: "Rules on how cloth and fillings burn differ by country and by setting, and they change. Ask us for what the supplier states of a cloth, and of what lies under it. Keep cloth off heaters and away from open flame, at the distance that the heater's maker states.",
  "small-parts":
    "Small parts: choking hazard for young children. Hem weights belong in closed pockets: where one has come open, or a button or bead is loose, take it away and have it sewn.",
};

/**
 * The caution's words for one kind of item (`armchair`, `paint`); neutral, and ending with the deference to local codes and
 * licensed practice: for who makes it, or for the client who lives with it. Null for a code that is not known.
 */
export function cautionFor(
  code: string,
  kind: string,
  reader: "maker" | "client" = "maker",
): Caution | null {
  const known = CAUTION_CODES.find((c) => c === code);
  if (known === undefined) return null;
  const { word, source, ...common } = COMMON[known];
  const text = (reader === "client" ? TO_CLIENT[known] : undefined) ?? common.text;
  const more = MORE[known]?.[kind];
  return { code: known, word, text: [text, more, DEFERENCE].filter(Boolean).join(" "), source };
}
