namespace PlanService;

/// <summary>What a browser shows of the bare address.</summary>
internal static class StartPage
{
    public const string Html = """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>Plan service</title>
        <style>
        body { font: 1rem/1.5 system-ui, sans-serif; max-width: 44rem; margin: 2rem auto; padding: 0 1rem; color: #1a1a1a; background: #fff; }
        pre { background: #f2f2f2; padding: .75rem; overflow-x: auto; }
        th { text-align: left; font-weight: normal; white-space: nowrap; padding-right: 1rem; vertical-align: top; }
        </style>
        </head>
        <body>
        <main>
        <h1>Plan service</h1>
        <p>It checks low-voltage camera power. Post a site file; it answers what each camera gets and what is wrong.</p>
        <pre tabindex="0"><code>curl -H 'Content-Type: application/json' --data-binary @site.json ADDRESS/assessments</code></pre>
        <p>With <code>-H 'Accept: text/html'</code> the answer is a page to read and to print.</p>
        <table>
        <tr><th scope="row"><code>POST /assessments</code></th><td>what each camera gets, as JSON or as a page</td></tr>
        <tr><th scope="row"><code>POST /verdicts</code></th><td>every verdict with the numbers that were compared</td></tr>
        <tr><th scope="row"><code>POST /diagnoses</code></th><td>what is most probably wrong, from readings and symptoms, and what to read next</td></tr>
        <tr><th scope="row"><a href="/schema">GET /schema</a></th><td>how a site file is written (JSON Schema)</td></tr>
        <tr><th scope="row"><a href="/rules">GET /rules</a></th><td>every rule that a site is checked against</td></tr>
        <tr><th scope="row"><a href="/inspections">GET /inspections</a></th><td>what a person must look at on site</td></tr>
        <tr><th scope="row"><a href="/openapi.json">GET /openapi.json</a></th><td>every member described, for making a client</td></tr>
        <tr><th scope="row"><a href="/health">GET /health</a></th><td>whether the service answers</td></tr>
        </table>
        <p>Everything here is worked out from the site file, not measured. Measure at commissioning, and follow the local code.</p>
        </main>
        </body>
        </html>

        """;
}
