/** Digits as the keyboards of other scripts type them: Arabic, Persian and Devanagari ones stand for the same figures. */

/** Where each script's zero stands in Unicode. */
const ZEROS = [0x0660, 0x06f0, 0x0966];

/** The text with Latin digits and a decimal point; whatever else stands in it stays. */
export function latinDigits(text: string): string {
  return text
    .replace(/[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f]/g, (digit) => {
      const code = digit.charCodeAt(0);
      return String(code - Math.max(...ZEROS.filter((zero) => zero <= code)));
    })
    .replaceAll("\u066b", ".");
}
