namespace Clothwright.Server.Guarding;

/// <summary>Headers on every answer: what the page may load, and that no other page may hold or read it.</summary>
internal sealed class GuardHeaders(RequestDelegate next)
{
    /// <summary>The page's scripts, styles and data come from this server alone; WebAssembly may be compiled, text may not be run.</summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; " +
        "manifest-src 'self'; worker-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext http)
    {
        IHeaderDictionary headers = http.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "geolocation=(), microphone=(), payment=(), usb=()";
        return next(http);
    }
}
