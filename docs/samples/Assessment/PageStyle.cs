namespace FuelMath.Samples.Assessment;

/// <summary>How the page looks on a screen, light and dark, on a phone, and on paper.</summary>
internal static class PageStyle
{
    private const string Layout = """
        *{box-sizing:border-box}
        body{font:15px/1.4 system-ui,sans-serif;max-width:980px;margin:1.5rem auto;padding:0 1rem;color:var(--ink);background:var(--page)}
        h1{font-size:1.5rem;margin:.2rem 0}h2{font-size:1.15rem;margin:1.6rem 0 .4rem;border-bottom:1px solid var(--line)}h3{font-size:1rem;margin:1rem 0 .2rem}
        .verdict{font-size:1.6rem;font-weight:700;margin:.2rem 0;padding:.2rem .6rem;border:3px solid currentColor;display:inline-block}
        .verdict.DoNotRun{color:var(--danger)}.verdict.ActFirst,.verdict.NotKnown{color:var(--warn)}.verdict.Holds{color:var(--good)}
        .wide{overflow-x:auto;display:inline-block;vertical-align:top;margin-right:1.2rem;max-width:100%}
        table{border-collapse:collapse;font-size:.84rem;margin:.5rem 0}caption{text-align:left;font-weight:600;padding:.2rem 0}
        th,td{border:1px solid var(--line);padding:.15rem .45rem;text-align:left;vertical-align:top}th{background:var(--fill)}th i{font-weight:400}
        .number{text-align:right;font-variant-numeric:tabular-nums}td.number{white-space:nowrap}
        .finding{padding:.3rem .7rem;margin:.4rem 0;background:var(--fill);border-left:6px solid var(--soft)}
        .finding.Danger{border-left:6px double var(--danger)}.finding.Warning{border-left:6px dashed var(--warn)}
        .finding ul{margin:.1rem 0;padding-left:1.2rem;color:var(--soft);font-size:.84rem}.finding .source{list-style:none}
        .note{color:var(--soft);font-size:.84rem;margin:.1rem 0 .6rem;width:0;min-width:100%}
        .head{border:2px solid var(--ink);padding:.2rem .7rem}.head p{margin:.25rem 0;font-weight:600}
        .line{margin:0;font-size:.84rem;white-space:pre-wrap}
        .pictures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,420px),1fr));gap:.8rem}
        figure{margin:0;padding:.4rem;border:1px solid var(--line)}figcaption{font-size:.84rem;color:var(--soft)}figure svg{width:100%;height:auto;display:block}
        .legend{margin:0;font-size:.84rem;text-align:center}.legend span{display:inline-block;white-space:nowrap;margin:0 .5rem}.legend svg{width:24px;height:12px;display:inline-block;margin-right:4px;vertical-align:middle}
        figure.path{grid-column:1/-1;overflow-x:auto}figure.path>svg{min-width:660px}figure.path.narrow>svg{min-width:460px;max-width:600px;margin:auto}
        """;

    /// <summary>A phone: the verdicts' rows become paragraphs, other tables scroll.</summary>
    private const string Phone = """
        @media screen and (max-width:600px){body{padding:0 .6rem;margin:.6rem auto}.verdicts,.verdicts tbody,.verdicts tr{display:block}.verdicts thead,.verdicts td:empty{display:none}
        .verdicts tr{border-bottom:1px solid var(--line);padding:.3rem 0}.verdicts td{display:block;border:0;padding:0}.verdicts td:first-child{font-weight:600;display:inline}.verdicts td:nth-child(2){display:inline;margin-left:.5rem}.verdicts td:nth-child(4)::before{content:"not known: "}}
        """;

    private const string Paper = """
        @page{margin:10mm 11mm}
        @media print{.tables,ul{orphans:1;widows:1}body{font-size:8.5pt;line-height:1.22;margin:0;max-width:none;padding:0}table{font-size:7pt;margin:1pt 0 2pt}td,th{padding:.3pt 1.6pt}.appendix th{font-size:6.3pt}.appendix th.number{width:8mm}.verdicts b{white-space:nowrap}
        .finding,figure,tr,.wide,.head,li{break-inside:avoid}h2,h3,caption,.keep{break-after:avoid}.wide{overflow:visible;margin-right:3pt}p{margin:1.5pt 0}
        h1{font-size:15pt;margin:0}h2{font-size:11.5pt;margin:5pt 0 2pt}h3{font-size:9.5pt;margin:4pt 0 1pt}
        .note,figcaption,.finding ul,.line{font-size:7pt;line-height:1.2}.note{margin:0 0 3pt}
        .verdict{font-size:14pt;padding:1pt 5pt;border-width:2pt}.head p{margin:1pt 0}.finding{padding:1pt 5pt;margin:1.5pt 0;font-size:8pt}
        .finding li{display:inline}.finding li:not(:last-child)::after{content:"  \2022  "}.finding ul{padding:0}
        ul{margin:0;font-size:6.8pt;line-height:1.15;padding-left:4mm}.cautions,.lines{columns:2}.appendix>p{break-after:avoid;break-inside:avoid}.wide{min-width:45mm}#table-estimates td:first-child{width:140mm}h1+.verdict{margin:1pt 0}
        .pictures{grid-template-columns:1fr 1fr;gap:1.5mm;grid-auto-flow:dense}figure{padding:1mm}figure.path{overflow:visible}figure.path>svg{min-width:0;max-height:118mm}figure.path.narrow{grid-column:auto;grid-row:span 2}figure.path.narrow>svg{min-width:0;max-width:none;max-height:102mm}.legend{font-size:7pt;line-height:1.15}.legend span{margin:0 3pt}.legend svg{width:16pt;height:8pt}}
        """;

    /// <summary>Dark where the reader's screen is; paper is always light.</summary>
    internal static string Text =>
        $":root{{{ChartColors.Css(false)}color-scheme:light dark}}\n@media screen and (prefers-color-scheme:dark){{:root{{{ChartColors.Css(true)}}}}}\n{Layout}\n{Phone}\n{Paper}";
}
