import type { TileCell } from "../swatches/tileCell.ts";

/** Who may read a document; it decides the tree under `out/` that it is written to. */
export type Reader = "client" | "maker" | "studio";

/** The sheets that the press knows (ISO 216 and ANSI sizes). */
export type Paper = "a3" | "a4" | "tabloid" | "letter";

/** One document: where it goes, how it is printed, and the plain values that its layout shows. */
export interface Page {
  readonly reader: Reader;
  /** The project that it belongs to, or null for what belongs to the whole studio (the index). */
  readonly project: string | null;
  /** The room that it belongs to, as `project/room`, or null. */
  readonly room: string | null;
  /** Path below `out/`, always with forward slashes, for example `client/quay/dining-room/index.html`. */
  readonly path: string;
  readonly title: string;
  readonly language: string;
  /** First sheet's paper; a document may mix sheets by named CSS pages. */
  readonly paper: Paper;
  /** True where the press prints it to the same path ending in .pdf. */
  readonly pdf: boolean;
  /** Only this reaches the layout. `kind` names the layout file `layouts/documents/<kind>.njk`. */
  readonly model: { readonly kind: string } & Readonly<Record<string, unknown>>;
  /** True where everything that it shows is written into the page itself, so that it can be sent by mail. */
  readonly inOneFile?: boolean;
  /** Pictures that the page shows, to be written beside it. */
  readonly pictures: readonly PagePicture[];
}

/** A picture that the images edge must make for a page, under a name that gives nothing away. */
export interface PagePicture {
  /** Path below `out/`. */
  readonly path: string;
  /** The photograph, as a path below the content folder. */
  readonly source: string;
  /** Part of the upright photograph to take, in its own pixels, or null for the whole. */
  readonly crop: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  } | null;
  /** Width of the made picture in pixels; never more than the crop's own (no upsampling). */
  readonly widthPx: number;
  /**
   * Null for a plain crop. Else one cell of the cloth's pattern, made so that it joins itself on all sides; in pixels of the whole
   * photograph, its middle at `middle`. With a `ground` the photograph shows less than a cell, and that colour stands for the rest.
   */
  readonly tile: TileCell | null;
  /** True where it is made in grey, each place as light as it is (L* of CIE 15). */
  readonly grey: boolean;
}
