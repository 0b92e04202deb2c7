/** A least figure in hundredths, never less than it is; a most one never more. */
export const upwards = (figure: number): string => (Math.ceil(figure * 100 - 1e-9) / 100).toFixed(2);
export const downwards = (figure: number): string => (Math.floor(figure * 100 + 1e-9) / 100).toFixed(2);
