import type { Checked } from "../diagnostics/diagnostic.ts";
import type { FoundBrowser } from "../press/findBrowser.ts";
import type { Compute, MakePictures } from "../site/computed.ts";

/** What a commented starting file is made from. */
export type StarterWanted =
  | { readonly kind: "studio" }
  // Where the studio's card says in which units its examples stand; without it in inches.
  | { readonly kind: "project"; readonly title: string; readonly contentDir?: string }
  /** With items of these kinds alone; of every kind where it is null. */
  | {
      readonly kind: "room";
      readonly title: string;
      readonly items: readonly string[] | null;
      readonly contentDir?: string;
    }
  /** Lines of one item, for a room that is there. */
  | { readonly kind: "item"; readonly item: string; readonly contentDir?: string }
  | {
      readonly kind: "cloth";
      readonly title: string;
      /** The photograph, and its file name beside the card. */
      readonly photo: string;
      readonly file: string;
      /** How much cloth it shows from left to right, as typed, or null. */
      readonly shows: string | null;
      /** Where the studio's card says what a large print is, and its units; without it the usual sizes hold. */
      readonly contentDir?: string;
    };

/** Text of a starting file, with every field, filled from what can be measured. */
export type Starter = (wanted: StarterWanted) => Promise<Checked<string>>;

/** What the verbs call; tests put smaller ones in their place. */
export interface Wiring {
  readonly compute: Compute;
  readonly makePictures: MakePictures;
  readonly starter: Starter;
  readonly findBrowser: () => Promise<Checked<FoundBrowser>>;
  readonly layoutsDir: string;
  /** Folder for finished PDFs, or null. */
  readonly pdfCache: () => string | null;
}
