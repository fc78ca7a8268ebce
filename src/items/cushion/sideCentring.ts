import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { capital } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { noMotifToCentre } from "../common/join/motifFaults.ts";
import { motifPlaceWords } from "../common/motifPlaceWords.ts";
import type { ItemContext } from "../itemKind.ts";

export interface SideAsk {
  readonly context: ItemContext;
  readonly cloth: string;
  readonly asked: "centred" | "as-it-falls" | undefined;
  readonly key: "motif" | "back-motif";
  /** Centred where nothing is said and the cloth has a motif. */
  readonly usually: boolean;
  readonly finishedWidth: Length;
  readonly cut: readonly [Length, Length];
  /** What the cut goes beyond the stated size on each edge: the seam, and a flange. */
  readonly seam: Length;
  /** The cloth is run sideways: nothing is centred, and the height must fit across. */
  readonly railroad: boolean;
  /** It is joined where it is wider than its cloth. */
  readonly joined: boolean;
  /** It could be joined: a flat top, not a bolster nor a split back. */
  readonly joinable: boolean;
}

/** Whether a side of a cushion has a motif in its middle; reports a cloth on which it cannot be, naming what would work. */
export function sideCentring(ask: SideAsk): {
  readonly centred: boolean;
  readonly diagnostics: readonly Diagnostic[];
} {
  const { context, key, cut, seam } = ask;
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const cloth = context.cloth(ask.cloth);
  const motif = hasMotif(cloth);
  const centred =
    !ask.railroad && (ask.asked === "centred" || (ask.asked === undefined && ask.usually && motif));
  if (cloth === null) return { centred, diagnostics: [] };
  if (ask.asked === "centred" && !motif)
    return { centred: false, diagnostics: [noMotifToCentre(cloth, key, context)] };
  if (ask.railroad && ask.asked === "centred") {
    const found = diagnostic(
      context.place([key]),
      "railroaded-not-centred",
      "The cloth is run sideways, so no motif stands upright in the middle.",
      {
        severity: "warning",
        actual: "centred",
        expected: "as-it-falls",
        hint: `Take railroad out, or write ${key}: as-it-falls.`,
      },
    );
    return { centred: false, diagnostics: [found] };
  }
  const usable = cloth.usableWidth;
  if (!usable) return { centred, diagnostics: [] };
  if (ask.joined && cut[0].isMoreThan(usable)) return { centred, diagnostics: [] };
  const turned = !centred && (cloth.mayTurn || ask.railroad) && !cut[1].isMoreThan(usable);
  const place = centred
    ? centredPlace(cloth, cut[0], cut[1])
    : { widest: usable, fits: turned || (!ask.railroad && !cut[0].isMoreThan(usable)) };
  if (place.fits || !place.widest) return { centred, diagnostics: [] };
  const step = finestStep(units);
  // Down, so that what is advised does fit.
  const most = place.widest.minus(seam.times(2)).downTo(step);
  const largest = most.compare(Length.zero) <= 0 ? null : p(most);
  const ways = [
    largest ? `make it ${largest} wide or less` : null,
    centred && !cut[0].isMoreThan(usable) ? `write ${key}: as-it-falls` : null,
    !ask.railroad && !cut[1].isMoreThan(usable)
      ? "write railroad: yes to run the cloth sideways, if pattern and pile look right so"
      : null,
    ask.joinable && cut[0].isMoreThan(usable)
      ? "write join: both-sides for a whole width in the middle and strips at the sides"
      : null,
    "choose a wider cloth",
  ].filter((way) => way !== null);
  const hint = `${ways.join(", or ")}.${centred ? motifPlaceWords(cloth, units) : ""}`;
  const found = diagnostic(
    context.place(["size"]),
    centred ? "motif-does-not-fit" : "piece-wider-than-cloth",
    centred
      ? `With its seams this cushion is ${p(cut[0])} wide; on ${cloth.name} the widest piece with a motif in its middle is ${p(place.widest)}.`
      : `With its seams this cushion is ${p(cut[0])} wide; ${cloth.name} is ${p(usable)}.`,
    {
      actual: p(ask.finishedWidth),
      expected: largest ? `${largest} or less` : null,
      hint: capital(hint),
    },
  );
  return { centred, diagnostics: [found] };
}
