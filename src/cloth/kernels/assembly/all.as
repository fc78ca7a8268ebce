export { addPower, transformColumns, transformRows } from "./fourier";
export { interleave, meansAlong, meansDown, separate } from "./gaussian";
export { oklabOfBytes, shrinkInLight } from "./light";
export { windowProducts } from "./windows";
