import { spellColourName } from "../../colour/colourName.ts";
import { difference } from "../../colour/difference.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { isNeutral, SAME_COLOUR } from "../palette.ts";
import { finding, listed, percent } from "./make.ts";

/** A cloth's own colour: the largest that is no neutral, where it has at least this share. */
const OWN = 0.05;

/** The colour by which one remembers a cloth: its largest that is no neutral. */
export function ownColour(swatch: Swatch): string | null {
  const found = [...swatch.colours]
    .filter((c) => !isNeutral(c.hex) && c.share >= OWN)
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1))[0];
  return found?.hex ?? null;
}

/** The anchor's minor colours come before its dominant one: the cloths repeat what is little in it. */
function minorFirst(input: FindingInput): Finding[] {
  const { say, room, palette } = input;
  const id = room.fields.anchor;
  const anchor = id ? (input.objects.get(id) ?? input.swatches.get(id)) : undefined;
  const colours = [...(anchor?.colours ?? [])]
    .filter((c) => !isNeutral(c.hex))
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1));
  const dominant = colours[0];
  if (!anchor || !dominant || colours.length < 2) return [];
  const same = (a: string, b: string): boolean => difference(a, b) <= SAME_COLOUR;
  const minors = colours.slice(1).filter((c) => !same(c.hex, dominant.hex));
  if (minors.length === 0) return [];
  const cloths = input.roles.flatMap((role) => {
    const swatch = role.cloth === id ? undefined : input.swatches.get(role.cloth);
    const own = swatch && !swatch.animal ? ownColour(swatch) : null;
    return own ? [{ id: role.cloth, name: role.name, own }] : [];
  });
  const ofMinor = cloths.filter((c) => minors.some((m) => same(c.own, m.hex)));
  const ofDominant = cloths.filter((c) => same(c.own, dominant.hex));
  if (ofMinor.length === 0 && ofDominant.length === 0) return [];
  const works = ofMinor.length > 0 && ofMinor.length >= ofDominant.length;
  const dominantName =
    palette.colours.find((p) => same(p.hex, dominant.hex))?.name ??
    spellColourName(dominant.name, input.language);
  return [
    finding(
      room,
      works ? "anchor-minor-first" : "anchor-dominant-first",
      works ? "works" : "worth-a-look",
      {
        message: works
          ? say`${listed(ofMinor.map((c) => c.name))} ${ofMinor.length === 1 ? say`takes` : say`take`} up the minor colours of ${anchor.name}.`
          : say`${listed(ofDominant.map((c) => c.name))} ${ofDominant.length === 1 ? say`repeats` : say`repeat`} ${dominantName}, the colour that ${anchor.name} has most of (${percent(dominant.share)}); ${ofMinor.length === 0 ? say`no cloth takes` : say`fewer take`} up its minor ones.`,
        reason: say`A room built on one piece repeats its minor colours before its dominant one, which the piece itself has enough of (common practice).`,
      },
      { minor: ofMinor.length, dominant: ofDominant.length, dominantShare: dominant.share },
      (works ? ofMinor : ofDominant).map((c) => c.id),
      ["anchor"],
    ),
  ];
}

/** The larger and the smaller print stand in different colours. */
function twoColours(input: FindingInput): Finding[] {
  const { say, room } = input;
  const main = input.roles.find((r) => r.role === "main");
  const small = input.roles.filter((r) => r.role === "small-print");
  const larger = main ? input.swatches.get(main.cloth) : undefined;
  const own = larger ? ownColour(larger) : null;
  if (!main || !own) return [];
  return small.flatMap((role): Finding[] => {
    const swatch = input.swatches.get(role.cloth);
    const other = swatch ? ownColour(swatch) : null;
    if (!other) return [];
    const apart = difference(own, other);
    const works = apart > SAME_COLOUR;
    return [
      finding(
        room,
        works ? "prints-in-two-colours" : "prints-in-one-colour",
        works ? "works" : "worth-a-look",
        {
          message: works
            ? say`The larger print and the smaller, ${main.name} and ${role.name}, lead with different colours.`
            : say`The larger print and the smaller, ${main.name} and ${role.name}, lead with the same colour.`,
          reason: say`Two prints in one colour look like a set that was bought together; in two colours of the anchor they look chosen (common practice).`,
        },
        { difference: apart },
        [main.cloth, role.cloth],
      ),
    ];
  });
}

/** One cloth is the accent. */
function accent(input: FindingInput): Finding[] {
  const { say, room } = input;
  const accents = input.roles.filter((r) => r.role === "accent");
  if (input.roles.length < 3) return [];
  const one = accents.length === 1;
  return [
    finding(
      room,
      one ? "accent-one" : "accents",
      one ? "works" : "worth-a-look",
      {
        message: one
          ? say`${accents[0]?.name ?? ""} is the one accent.`
          : accents.length === 0
            ? say`No cloth is the accent.`
            : say`${listed(accents.map((a) => a.name))} are all accents.`,
        reason: say`One cloth that matches nothing keeps a room from looking too well behaved; two cancel each other (common practice).`,
      },
      { accents: accents.length },
      accents.map((a) => a.cloth),
    ),
  ];
}

/** What a scheme that is built on one piece asks for; only for rooms of that approach. */
export function fromAnchorFindings(input: FindingInput): Finding[] {
  if (input.room.fields.approach !== "from-anchor") return [];
  return [...minorFirst(input), ...twoColours(input), ...accent(input)];
}
