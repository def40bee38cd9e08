using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace CalibrationApi.Reference.Codes;

/// <summary>The codes as a page that works without a network, on a phone and on paper.</summary>
internal static partial class CodePage
{
    private static readonly Lazy<string> Written = new(Write);

    private static readonly (string Kind, string Heading, string Lead)[] Parts =
    [
        ("error", "Errors", "In the <code>errors</code> of a problem. The request has to be put right; nothing was stored."),
        (
            "refusal",
            "Refusals",
            "In the <code>errors</code> of a problem too: every member is well-formed, but together they have no sound answer."
        ),
        (
            "finding",
            "Findings and reasons",
            "In the <code>findings</code> and <code>reasons</code> of an answer. A note is worth knowing, a warning wants a look, and a stop forbids seeding on the answer."
        ),
        (
            "mistake",
            "Likely mistakes",
            "In the <code>likelyMistakes</code> of a catch test. Each comes with its probability; the mass alone proves none of them, so the remedy is what to look at."
        ),
        (
            "caution",
            "Cautions",
            "In the <code>cautions</code> of an answer, always to be shown. The machine's manual, the product label, local rules and licensed or certified advice go first."
        ),
    ];

    public static string Html => Written.Value;

    private static string Write()
    {
        var page = new StringBuilder(Head);
        page.Append("<nav aria-label=\"Kinds of codes\">");
        foreach (var (kind, heading, _) in Parts)
            page.Append("<a href=\"#").Append(Anchor(kind)).Append("\">").Append(heading).Append("</a> ");
        page.Append("<a href=\"/reference/index.html\">Reference of the contract</a></nav>\n");
        page.Append("<label hidden>Search the codes<input type=\"search\" autocomplete=\"off\"></label>\n<output></output>\n");
        foreach (var (kind, heading, lead) in Parts)
        {
            page.Append("<section>\n<h2 id=\"")
                .Append(Anchor(kind))
                .Append("\">")
                .Append(heading)
                .Append("</h2>\n<p>")
                .Append(lead)
                .Append("</p>\n");
            foreach (var code in CodeList.All.Where(code => code.Kind == kind))
                Add(page, code);
            page.Append("</section>\n");
        }

        return page.Append("</main>\n<script src=\"/reference/codes-page.js\"></script>\n</body>\n</html>\n").ToString();
    }

    private static void Add(StringBuilder page, CodeAnswer code)
    {
        page.Append("<article id=\"")
            .Append(code.Code)
            .Append("\">\n<h3><a href=\"#")
            .Append(code.Code)
            .Append("\">")
            .Append(code.Code)
            .Append("</a>");
        foreach (var status in code.Statuses ?? [])
            page.Append(" <span>").Append(status).Append("</span>");
        foreach (var severity in code.Severities ?? [])
            page.Append(" <span class=\"").Append(severity).Append("\">").Append(severity).Append("</span>");
        page.Append("</h3>\n<dl><dt>Cause</dt><dd>")
            .Append(Sentence(code.Cause))
            .Append("</dd>\n<dt>What to do</dt><dd>")
            .Append(Sentence(code.Remedy))
            .Append("</dd></dl>\n</article>\n");
    }

    // The anchor of a part can never be that of a code.
    private static string Anchor(string kind) => $"kind-{kind}";

    private static string Sentence(string text) => Code().Replace(WebUtility.HtmlEncode(text), "<code>$1</code>");

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();

    private const string Head = """
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>Calibration API: codes</title>
        <style>
        :root { color-scheme: light dark; --ink: #1b1f23; --quiet: #57606a; --line: #d0d7de; --ground: #fff; --link: #0a58a8; --note: #1f5fa8; --warning: #8a5300; --stop: #b3261e; }
        @media (prefers-color-scheme: dark) { :root { --ink: #e6e8ea; --quiet: #a3acb5; --line: #3d444d; --ground: #16191d; --link: #7ab8ff; --note: #8bbcf5; --warning: #f0b35a; --stop: #ff8a80; } }
        * { box-sizing: border-box; }
        body { margin: 0; background: var(--ground); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
        main { max-width: 52rem; margin: 0 auto; padding: 1rem; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: .5rem 0; }
        h2 { font-size: 1.3rem; margin: 2.5rem 0 .25rem; }
        h3 { font-size: 1rem; margin: 0 0 .25rem; font-family: ui-monospace, monospace; }
        h3 a { color: inherit; text-decoration: none; }
        h3 a:hover { text-decoration: underline; }
        h3 span { font: 600 .8rem/1.4 system-ui, sans-serif; border: 1px solid currentColor; border-radius: .3rem; padding: 0 .4rem; margin-left: .25rem; color: var(--quiet); white-space: nowrap; }
        h3 .note { color: var(--note); }
        h3 .warning { color: var(--warning); }
        h3 .stop { color: var(--stop); }
        a { color: var(--link); }
        nav { display: flex; flex-wrap: wrap; gap: .25rem 1rem; }
        nav a { padding: .35rem 0; }
        label { display: block; margin: 1rem 0 .25rem; color: var(--quiet); }
        [hidden] { display: none; }
        input { display: block; width: 100%; max-width: 30rem; margin-top: .25rem; padding: .5rem .6rem; font: inherit; color: var(--ink); background: var(--ground); border: 1px solid var(--quiet); border-radius: .3rem; }
        output { display: block; min-height: 1.5rem; color: var(--quiet); }
        article { border-top: 1px solid var(--line); padding: .8rem 0; scroll-margin-top: .5rem; break-inside: avoid; }
        article:target { outline: 2px solid var(--link); outline-offset: .3rem; }
        dl { margin: 0; display: grid; grid-template-columns: 6.5rem 1fr; gap: .1rem .75rem; }
        dt { color: var(--quiet); }
        dd { margin: 0; }
        code { font-family: ui-monospace, monospace; }
        @media (max-width: 30rem) { dl { grid-template-columns: 1fr; } dd { margin-bottom: .3rem; } }
        @media print {
          :root { color-scheme: light; --ink: #000; --quiet: #333; --line: #999; --ground: #fff; --note: #000; --warning: #000; --stop: #000; }
          body { font-size: 10pt; } main { max-width: none; padding: 0; } nav, label, output { display: none; }
          h2 { break-after: avoid; }
        }
        </style>
        </head>
        <body>
        <main>
        <h1>Codes of the Calibration API</h1>
        <p>Every code that an answer can carry, what it comes from and what to do. Codes never change their meaning; new ones are added. Programs get the same from <a href="/v1/codes">GET /v1/codes</a>.</p>

        """;
}
