namespace CamPower.Reports.Writing;

/// <summary>Style sheet of the page, for a screen and for paper. No character of it needs escaping.</summary>
internal static class PageStyle
{
    internal const string Text = """

        :root { color-scheme: light; }
        body { margin: 0; background: #fff; color: #1a1a1a; font: 1rem/1.45 Verdana, "DejaVu Sans", Arial, sans-serif; }
        main { max-width: 64rem; margin: 0 auto; padding: 1rem; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .5rem; }
        h2 { font-size: 1.25rem; line-height: 1.25; margin: 2rem 0 .5rem; padding-top: .4rem; border-top: 2px solid #1a1a1a; }
        h3 { font-size: 1rem; margin: 0 0 .25rem; }
        h1, h2, h3, th, td, dd, li, p, caption { overflow-wrap: anywhere; }
        p { margin: .5rem 0; max-width: 48rem; }
        strong { font-size: 1.1rem; }
        dl { margin: .5rem 0; font-size: .9rem; }
        dl div { display: flex; gap: .75rem; margin: .15rem 0; }
        dt { flex: 0 0 8.5rem; font-weight: bold; }
        dd { margin: 0; flex: 1; min-width: 0; }
        .scrolled { overflow-x: auto; margin: 1rem 0; }
        table { border-collapse: collapse; font-size: .8rem; line-height: 1.3; width: 100%; }
        caption { text-align: left; font-weight: bold; padding: .25rem 0; }
        th, td { border: 1px solid #8a8a8a; padding: .25rem .4rem; text-align: left; vertical-align: top; overflow-wrap: normal; }
        thead th { background: #ececec; }
        tbody th { font-weight: bold; }
        .number { text-align: right; font-variant-numeric: tabular-nums; }
        .findings { list-style: none; margin: 0; padding: 0; }
        .findings ul { margin: .5rem 0; padding-left: 1.2rem; }
        .findings .danger, .findings .failure, .findings .caution,
        .findings .note { border: 1px solid #8a8a8a; border-left-width: .5rem; padding: .5rem .75rem; margin: .6rem 0; }
        .findings .danger { border-color: #8b0000; border-left-style: double; border-left-width: .9rem; }
        .findings .failure { border-color: #8b0000; }
        .findings .caution { border-color: #8a5a00; border-left-style: dashed; }
        .findings .note { border-color: #2f5d8a; border-left-style: dotted; }
        .evidence, .source { font-size: .85rem; color: #3d3d3d; }
        .severity { text-transform: uppercase; letter-spacing: .03em; }
        .pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 25rem), 1fr)); gap: 1rem; align-items: start; }
        .diagram { margin: 1rem 0; overflow-x: auto; }
        .diagram svg { min-width: 44rem; }
        figure { margin: 0; border: 1px solid #c4c4c4; padding: .5rem; }
        figure svg { display: block; width: 100%; height: auto; }
        @page { margin: 8mm 12mm 10mm;
          @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 7pt Verdana, "DejaVu Sans", Arial, sans-serif; } }
        @media print {
          :root { font-size: 7.8pt; }
          body { line-height: 1.25; }
          main { max-width: none; padding: 0; }
          h2 { margin: .6rem 0 .2rem; padding-top: .1rem; border-top-width: 1px; }
          p { margin: .15rem 0; max-width: none; }
          dl { margin: .1rem 0; }
          .scrolled { overflow: visible; margin: .1rem 0; }
          table { font-size: 7pt; line-height: 1.2; }
          th, td { padding: .05rem .3rem; }
          thead { display: table-header-group; }
          th, td, thead th { background: none; }
          tr, figure, .findings li, dl div, caption { break-inside: avoid; }
          h1, h2, h3, caption, thead { break-after: avoid; }
          dl, p { break-inside: avoid; }
          .findings { columns: 2; column-gap: 4mm; }
          .findings ul { margin: .1rem 0; }
          .findings p { margin: .1rem 0; }
          .findings .danger, .findings .failure, .findings .caution, .findings .note {
            padding: .15rem .4rem; margin: 0 0 .4rem; border-width: 0 0 0 .35rem; }
          .findings .danger { border-left-width: .6rem; }
          .findings .evidence { display: none; }
          .source { font-size: 6.3pt; line-height: 1.15; }
          .screen { display: none; }
          .diagram { margin: .4rem 0; }
          .diagram svg { min-width: 0; }
          .diagram figure { border: 0; padding: 0; }
          .pictures { display: block; margin-top: .4rem; }
          .pictures figure { display: inline-block; box-sizing: border-box; width: 49%; vertical-align: top;
            margin: 0 0 2mm; padding: .2rem; }
        }

        """;
}
