/** The short number of a job, as it stands on its label and in the list. */

const DIGITS = 6;

/** The first six letters or digits of the job's id, in capitals: enough to tell the jobs of a shop apart, short enough to be read out. */
export function jobNumber(id: string): string {
  return id
    .replace(/[^A-Za-z0-9]/g, "")
    .slice(0, DIGITS)
    .toUpperCase();
}

/** The id in what a scanner types for a label's code: the address of a job, or its bare id. Null where it is neither. */
export function scannedId(text: string): string | null {
  const [, inAddress] = /#\/job\/([A-Za-z0-9_-]{1,64})\/?$/.exec(text.trim()) ?? [];
  if (inAddress !== undefined) return inAddress;
  return /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text.trim()) ? text.trim().toLowerCase() : null;
}
