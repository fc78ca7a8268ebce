import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding, listed, percent } from "./make.ts";

/** Two prints compete when the second has at least this share of the first one's area and a motif nearly as large; common practice. */
const COMPETES_AREA = 0.75;
const COMPETES_MOTIF = 0.75;

/** The least share of the cloth that is seen of which it can be said that it leads; common practice, no source. */
const LEADS = 0.1;

/** Beside another cloth none is said to be all of it, however small the other is. */
const MOST = 0.99;

/** One cloth leads; without it, or with two that compete, the eye has nowhere to begin. Not asked of a `free` scheme. */
export function mainClothFindings(input: FindingInput): Finding[] {
  const { room, say, traditions } = input;
  const { approach } = room.fields;
  if (approach === "free" || input.roles.length === 0) return [];
  const main = input.roles.find((r) => r.role === "main");
  if (!main) {
    // Textures may do without, and a restrained room is told apart by scale and value, not by a leader.
    if (traditions.has("room-of-textures") || approach === "restrained") return [];
    return [
      finding(
        room,
        "no-main-cloth",
        "worth-a-look",
        {
          message: say`No cloth leads this room: every cloth of the mix is plain.`,
          reason: say`A patterned room is usually built on one main cloth (common practice). A room of textures may do without.`,
        },
        { patterned: 0 },
      ),
    ];
  }
  const rivals = input.roles.filter(
    (r) =>
      (r.role === "supporting" || r.role === "main") &&
      r !== main &&
      !traditions.together(r.cloth, main.cloth) &&
      r.areaMm2 >= COMPETES_AREA * main.areaMm2 &&
      (r.motifMm ?? 0) >= COMPETES_MOTIF * (main.motifMm ?? Number.POSITIVE_INFINITY),
  );
  if (rivals.length > 0) {
    return [
      finding(
        room,
        "mains-compete",
        "worth-a-look",
        {
          message: say`${listed([main, ...rivals].map((r) => r.name))} compete: they are nearly as large in motif and in what is seen.`,
          reason: say`Two large prints of one weight leave the eye between them (common practice). Give one of them less, or a smaller motif.`,
        },
        { share: main.shareOfCloth, rivalShare: rivals[0]?.shareOfCloth ?? 0 },
        [main, ...rivals].map((r) => r.cloth),
      ),
    ];
  }
  // Where paper or another cloth fills the room, nobody would say of so little that it leads.
  if (main.shareOfCloth < LEADS) return [];
  // Where no other cloth is seen there is nothing to lead.
  if (!input.roles.some((r) => r !== main && r.areaMm2 > 0)) return [];
  return [
    finding(
      room,
      "main-cloth",
      "works",
      {
        message: say`${main.name} leads: ${percent(Math.min(main.shareOfCloth, MOST))} of the cloth that is seen.`,
        reason: say`One cloth that leads gives the eye a place to begin (common practice).`,
      },
      { share: main.shareOfCloth, motifMm: main.motifMm ?? 0 },
      [main.cloth],
    ),
  ];
}
