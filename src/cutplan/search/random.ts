/** A seeded stream of whole numbers (xorshift, 32 bits): the same seed gives the same plan on every machine. */
export class RandomStream {
  private state: number;

  constructor(seed: number) {
    this.state = (Math.imul(seed | 0, 0x9e3779b1) ^ 0x85ebca6b) | 0 || 1;
    for (let i = 0; i < 8; i++) this.next();
  }

  private next(): number {
    let s = this.state;
    s ^= s << 13;
    s ^= s >>> 17;
    s ^= s << 5;
    this.state = s;
    return s >>> 0;
  }

  /** A whole number from 0 to bound - 1. */
  below(bound: number): number {
    return Math.floor((this.next() / 4294967296) * bound);
  }
}

const CHANCE_BITS = 20;

/**
 * A random number above 0 with mean about 1, large ones ever less likely: -ln of an even chance. The logarithm runs straight between
 * powers of two, since Math.log may differ in its last digit from machine to machine.
 */
export function surprise(random: RandomStream): number {
  const chance = random.below(2 ** CHANCE_BITS) + 1;
  const power = 31 - Math.clz32(chance);
  return Math.LN2 * (CHANCE_BITS - power - (chance / 2 ** power - 1));
}
