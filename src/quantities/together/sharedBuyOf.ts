import type { ProjectQuantities, SharedBuy } from "../quantityTypes.ts";

/** The order that one maker's cloth is part of; null where it is bought for that maker alone. */
export function sharedBuyOf(
  { together }: Pick<ProjectQuantities, "together">,
  { cloth, maker }: { readonly cloth: string; readonly maker: string | null },
): SharedBuy | null {
  const found = together.find((each) => each.cloth === cloth);
  return found?.parts.some((part) => part.maker === maker) ? found : null;
}
