import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import type { Tradition } from "../traditions.ts";
import { finding, listed } from "./make.ts";

function words(tradition: Tradition, names: string, say: FindingInput["say"]): string {
  switch (tradition.name) {
    case "checks-together":
      return say`${names} stand together: checks with checks are a tradition of their own.`;
    case "toile-and-stripe":
      return say`${names}: a print in one ink with its stripe, an old pair.`;
    case "one-print-all-over":
      return tradition.cloths.length === 1
        ? say`${names} goes all over the room: one print on so much of it reads as one.`
        : say`${names}, in one colouring, go all over the room: prints on so much of it read as one.`;
    case "room-of-textures":
      return say`${names}: a room of textures, where the weave does what pattern does elsewhere.`;
  }
}

/** The traditions that the room follows; what they allow is then not complained of. */
export function traditionFindings(input: FindingInput): Finding[] {
  if (input.room.fields.approach === "free") return [];
  return input.traditions.found.map((t) => {
    const names = listed(t.cloths.map((id) => input.swatches.get(id)?.name ?? id));
    return finding(
      input.room,
      "tradition",
      "works",
      {
        message: words(t, names, input.say),
        reason: input.say`Each school has its own rules (common practice). What this one allows is not held against the room.`,
      },
      { tradition: t.name, cloths: t.cloths.length },
      t.cloths,
    );
  });
}
