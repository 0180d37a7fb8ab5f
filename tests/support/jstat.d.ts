/** The few functions of the statistics library that the checks call; it ships no types. */
declare module 'jstat' {
  interface Normal {
    cdf(x: number, mean: number, sd: number): number;
    pdf(x: number, mean: number, sd: number): number;
  }
  const jstat: { normal: Normal };
  export default jstat;
}
