/**
 * Two marks of a layout. Layouts that agree in both, in the number of pieces and in their length are the same: the same pieces in the
 * same places, in whatever order where order leaves no trace.
 */
export class LayoutMark {
  first = 0;
  second = 0;

  /** Takes something into the marks: three numbers, well mixed, and summed so that their order counts or does not. */
  note(what: number, x: number, y: number, orderCounts: boolean): void {
    let mixed = Math.imul(what, 0x9e3779b1) ^ Math.imul(x, 0x85ebca6b) ^ Math.imul(y, 0xc2b2ae35);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
    mixed ^= mixed >>> 12;
    let other = Math.imul(y, 0x9e3779b1) + Math.imul(x, 0x297a2d39) + Math.imul(what, 0x165667b1);
    other = Math.imul(other ^ (other >>> 16), 0x7feb352d);
    other ^= other >>> 15;
    if (orderCounts) {
      this.first = Math.imul(this.first, 31);
      this.second = Math.imul(this.second, 17);
    }
    this.first = (this.first + mixed) | 0;
    this.second = (this.second + other) | 0;
  }
}
