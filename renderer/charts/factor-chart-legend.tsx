/** What the marks of factor charts mean, once for all of them. */
export function FactorChartLegend({ hasCurve }: { readonly hasCurve: boolean }) {
  return (
    <p className="soft small">
      Dots: every score, each taster in a lane of their own. Diamonds: means, with their 95 % intervals.
      {hasCurve ? ' Line: the trend, with its 95 % band.' : ''}
    </p>
  );
}
