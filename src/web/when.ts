/** Days and times in the reader's form. */
import { writingOf } from "../messages/language.ts";
import { language } from "./say.ts";

/** A moment (RFC 3339) in this form; years are counted alike in every language, as a shop writes them on its bills. */
export function when(at: string, form: Intl.DateTimeFormatOptions): string {
  return new Date(at).toLocaleString(writingOf(language()).locale, { ...form, calendar: "gregory" });
}
