// What a host says with the site's files, as the guide for webmasters (web/site/README.md) shows it: the site's own policy once more, and what
// no page can say of itself.
import { policyText, siteDirectives } from "./policy.mjs";

/** Everything that the page does not use, of what browsers let a policy turn off. It uses the share sheet and the clipboard. */
const turnedOff = [
  ...[
    "accelerometer",
    "autoplay",
    "camera",
    "display-capture",
    "encrypted-media",
    "fullscreen",
    "geolocation",
  ],
  ...["gyroscope", "hid", "identity-credentials-get", "idle-detection", "magnetometer", "microphone", "midi"],
  ...["payment", "picture-in-picture", "publickey-credentials-get", "screen-wake-lock", "serial", "usb"],
  ...["xr-spatial-tracking"],
];

/** `frame-ancestors`: pages of the club's own site may show it in a frame. */
export const siteHeaders = {
  "Content-Security-Policy": policyText({ ...siteDirectives, "frame-ancestors": ["'self'"] }),
  "Permissions-Policy": turnedOff.map((feature) => `${feature}=()`).join(", "),
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};

/** For the `server` of nginx, with the site in the folder `path` of its root. */
export function nginxExample(path = "/fit/") {
  const headers = Object.entries(siteHeaders).map(
    ([name, value]) => `    add_header ${name} "${value}" always;`,
  );
  return `# The site of Saddlerule, for the server section of nginx. Change ${path} if the folder is elsewhere.
location ${path} {
${headers.join("\n")}
    # Requested again each time, except for what is in files/, whose names depend on their content.
    expires -1;
    location ${path}files/ { expires 1d; }
    location = ${path}manifest.webmanifest { default_type application/manifest+json; }
    gzip on;
    gzip_comp_level 9;
    gzip_types application/wasm application/json application/manifest+json image/svg+xml text/css text/javascript
               application/javascript text/plain;
}
`;
}

/** For a file .htaccess in the site's folder. A directive of a module that a host has not turned on would end in an error 500 for every file. */
export function apacheExample() {
  const headers = Object.entries(siteHeaders).map(
    ([name, value]) => `  Header always set ${name} "${value}"`,
  );
  return `# The site of Saddlerule, for a file called .htaccess in its folder. What a host's modules cannot do is left out.
<IfModule mod_headers.c>
${headers.join("\n")}
  # Requested again each time, except for what is in files/, whose names depend on their content.
  Header set Cache-Control "no-cache"
  Header set Cache-Control "max-age=86400" "expr=%{REQUEST_URI} =~ m#/files/#"
</IfModule>
<IfModule mod_mime.c>
  AddType application/wasm .wasm
  AddType application/manifest+json .webmanifest
</IfModule>
<IfModule mod_filter.c>
  <IfModule mod_deflate.c>
    AddOutputFilterByType DEFLATE application/wasm application/json application/manifest+json image/svg+xml
    AddOutputFilterByType DEFLATE text/html text/css text/javascript application/javascript text/plain
  </IfModule>
</IfModule>
`;
}
