/** One cell of a cloth's pattern, to be made from its photograph; all in pixels of the upright picture. */
export interface TileCell {
  readonly widthPx: number;
  readonly heightPx: number;
  /** False where nothing comes again that way: the cell's size is then free, and is a part of the picture. */
  readonly repeatsAcross: boolean;
  readonly repeatsUp: boolean;
  /** True where every other column hangs half a cell lower. */
  readonly halfDrop: boolean;
  /** The place of the photograph that stands in the cell's middle. */
  readonly middle: { readonly x: number; readonly y: number };
  /** Where the photograph shows less than a cell: the colour of what it does not show. Null where it shows all. */
  readonly ground: string | null;
}
