namespace FuelMath.Samples.Assessment;

/// <summary>How the page looks on a screen, light and dark, on a phone, and on paper.</summary>
internal static class PageStyle
{
    internal const string Text = """
        :root{--ink:#1b1f23;--soft:#57606a;--line:#c3cad1;--fill:#f3f5f7;--page:#fff;--danger:#a40e26;--warn:#8a5a00;--good:#0b5d3b;color-scheme:light dark}
        @media (prefers-color-scheme:dark){:root{--ink:#e6edf3;--soft:#9da7b1;--line:#444c56;--fill:#21262d;--page:#0f1318;--danger:#ff8b93;--warn:#f0b849;--good:#63d39b}}
        *{box-sizing:border-box}
        body{font:15px/1.4 system-ui,sans-serif;max-width:980px;margin:1.5rem auto;padding:0 1rem;color:var(--ink);background:var(--page)}
        h1{font-size:1.5rem;margin:.2rem 0}h2{font-size:1.15rem;margin:1.6rem 0 .4rem;border-bottom:1px solid var(--line)}h3{font-size:1rem;margin:1rem 0 .2rem}
        .verdict{font-size:1.6rem;font-weight:700;margin:.2rem 0;padding:.2rem .6rem;border:3px solid currentColor;display:inline-block}
        .verdict.DoNotRun{color:var(--danger)}.verdict.ActFirst,.verdict.NotKnown{color:var(--warn)}.verdict.Holds{color:var(--good)}
        .wide{overflow-x:auto;display:inline-block;vertical-align:top;padding-right:1.2rem;max-width:100%}
        table{border-collapse:collapse;font-size:.84rem;margin:.5rem 0}caption{text-align:left;font-weight:600;padding:.2rem 0}
        th,td{border:1px solid var(--line);padding:.15rem .45rem;text-align:left;vertical-align:top}th{background:var(--fill)}th i{font-weight:400}
        .number{text-align:right;font-variant-numeric:tabular-nums}
        .finding{padding:.3rem .7rem;margin:.4rem 0;background:var(--fill);border-left:6px solid var(--soft)}
        .finding.Danger{border-left:6px double var(--danger)}.finding.Warning{border-left:6px dashed var(--warn)}
        .where,.note{color:var(--soft);font-size:.84rem}.note{margin:.1rem 0 .6rem;width:0;min-width:100%}
        .head{border:2px solid var(--ink);padding:.2rem .7rem}.head p{margin:.25rem 0;font-weight:600}
        pre{background:var(--fill);padding:.6rem;font-size:.72rem;line-height:1.3;white-space:pre;overflow-x:auto}
        figure{margin:.8rem 0}figcaption{font-size:.84rem;color:var(--soft)}figure svg{max-width:100%;height:auto;display:block}
        figure.plot{background:#fff;color:#57606a;padding:.3rem;border:1px solid var(--line)}figure.plot figcaption{color:#57606a}
        @page{margin:11mm 11mm}
        @media print{body{font-size:9pt;line-height:1.25;margin:0;max-width:none;padding:0}table{font-size:7.2pt}td,th{padding:.5pt 3pt}
        .finding,figure,tr{break-inside:avoid}h2,h3,caption{break-after:avoid}.wide{overflow:visible;padding-right:8pt;break-inside:avoid}p{margin:2pt 0}.note,.where,figcaption{font-size:7pt}h2{margin:7pt 0 2pt}h3{margin:5pt 0 1pt}table{margin:2pt 0}figure{margin:3pt 0}pre{font-size:5.3pt;line-height:1.1;padding:0;background:none;white-space:pre-wrap;overflow:visible}
        .verdict{font-size:16pt}.head{break-inside:avoid}.head p{margin:1pt 0}.finding{padding:1pt 5pt;margin:2pt 0;font-size:8pt;line-height:1.25}.finding br{display:none}.finding .where{margin-left:4pt}.sheet p{font-size:8pt}.pair{display:flex}.pair figure{width:50%}ul{margin:0;font-size:7.5pt}
        figure svg{max-height:45mm;width:auto;margin:auto}figure.path svg{max-height:104mm}}
        """;
}
