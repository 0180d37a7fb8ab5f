const collator = new Intl.Collator('en', { numeric: true });

/** Compares two labels with numbers in them by their size: "Child 9" before "Child 10". */
export const compareLabels = (a: string, b: string): number => collator.compare(a, b);
