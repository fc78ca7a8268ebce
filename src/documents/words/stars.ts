/** What stands where no price is in yet. */
export const TO_COME = "to come *";

/** A sum with a star where it will grow with prices that are still to come. */
export function starred(sum: string, isOpen: boolean): string {
  return isOpen ? `${sum} *` : sum;
}
