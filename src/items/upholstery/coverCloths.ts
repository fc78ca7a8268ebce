interface ClothUse {
  readonly surface: string;
  readonly cloth: string;
  readonly keyPath: readonly (string | number)[];
}

/** The cards that an upholstered thing names: its cover, pieces in a cloth of their own, its welt. */
export function coverCloths(fields: {
  readonly cloth: string;
  readonly welt?: string | undefined;
  readonly pieces?:
    | readonly { readonly piece: string; readonly cloth?: string | undefined }[]
    | undefined;
}): ClothUse[] {
  return [
    { surface: "cover", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.pieces ?? []).flatMap((p, at) =>
      p.cloth ? [{ surface: p.piece, cloth: p.cloth, keyPath: ["pieces", at, "cloth"] }] : [],
    ),
    ...(fields.welt ? [{ surface: "welt", cloth: fields.welt, keyPath: ["welt"] }] : []),
  ];
}
