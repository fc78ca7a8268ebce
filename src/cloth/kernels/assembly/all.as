export { addPower, transformColumns, transformRows } from "./fourier";
export { interleave, meansAlong, meansDown, separate } from "./gaussian";
export { windowProducts } from "./windows";
