import { colourName } from "../colour/colourName.ts";
import { family } from "../colour/family.ts";
import { lightReflectance } from "../colour/luminance.ts";
import { oklchOf } from "../colour/oklab.ts";
import type { SwatchColour } from "./swatch.ts";

/** A colour as a card says it; the share is a Fraction of one. */
export interface DeclaredColour {
  readonly colour: string;
  readonly share?: { valueOf(): number };
  readonly name?: string;
}

/**
 * Colours said by hand. Those without a share divide what the others leave, evenly; then all are brought to sum to one. Largest
 * share first.
 */
export function declaredColours(declared: readonly DeclaredColour[]): SwatchColour[] {
  const said = declared.reduce((sum, each) => sum + (each.share?.valueOf() ?? 0), 0);
  const silent = declared.filter((each) => each.share === undefined).length;
  const each = silent > 0 ? Math.max(0, 1 - said) / silent : 0;
  const shares = declared.map((one) => one.share?.valueOf() ?? each);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return declared
    .map(
      (one, at): SwatchColour => ({
        hex: one.colour,
        oklch: oklchOf(one.colour),
        share: total > 0 ? (shares[at] as number) / total : 1 / declared.length,
        name: one.name ?? colourName(one.colour).name,
        family: family(one.colour),
        lrv: lightReflectance(one.colour),
      }),
    )
    .sort((a, b) => b.share - a.share);
}
