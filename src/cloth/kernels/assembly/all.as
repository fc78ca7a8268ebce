export { addPower, transformColumns, transformRows } from "./fourier";
export { interleave, meansAlong, meansDown, separate } from "./gaussian";
export { gainLight, oklabOfBytes, shrinkInLight } from "./light";
export { windowProducts } from "./windows";
