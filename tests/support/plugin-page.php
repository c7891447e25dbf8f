<?php
// The few functions of a content management system that the plugin calls, as its documents describe them, around the plugin itself: asks for the
// markup of shortcodes. php plugin-page.php PLUGIN.php < JSON; prints JSON. The real system is in tests/plugin.

define('ABSPATH', '/');

$said = json_decode(stream_get_contents(STDIN), true);
$seen = ['scripts' => [], 'enqueued' => [], 'blocks' => [], 'shortcodes' => []];
$hooked = [];

function add_action(string $hook, callable $then): void { $GLOBALS['hooked'][] = $then; }
function add_shortcode(string $name, callable $markup): void { $GLOBALS['seen']['shortcodes'][$name] = $markup; }
function register_block_type(string $name, array $how): void { $GLOBALS['seen']['blocks'][$name] = $how; }
function wp_register_script(string $name, string $address, array $needs, string $version, bool $late): void
{
    $GLOBALS['seen']['scripts'][$name] = "$address?ver=$version";
}
function wp_enqueue_script(string $name): void { $GLOBALS['seen']['enqueued'][] = $name; }
function plugins_url(string $path, string $file): string { return "https://club.example/plugins/saddlerule/$path"; }
function get_file_data(string $file, array $fields): array
{
    preg_match('/^ \* Version: (.*)$/m', file_get_contents($file), $found);
    return ['version' => $found[1]];
}
function shortcode_atts(array $known, $given, string $name): array
{
    return array_replace($known, array_intersect_key((array) $given, $known));
}
function esc_attr(string $text): string { return htmlspecialchars($text, ENT_QUOTES); }
function esc_url(string $address, ?array $schemes = null): string
{
    $scheme = parse_url($address, PHP_URL_SCHEME);
    $allowed = $scheme === null || in_array($scheme, $schemes ?? ['http', 'https', 'mailto'], true);
    return $allowed ? htmlspecialchars(preg_replace('/[<>" ]/', '', $address), ENT_QUOTES) : '';
}
function get_posts(array $asked): array
{
    return array_map(fn($upload) => (object) ['ID' => $upload['address'], 'post_author' => $upload['by']], $GLOBALS['said']['uploads']);
}
function sanitize_file_name(string $name): string { return str_replace(' ', '-', $name); }
function get_post_field(string $field): string { return (string) $GLOBALS['said']['writer']; }
function wp_get_attachment_url($id): string { return $id; }
function user_can(int $user, string $what): bool { return $what === 'edit_others_pages' && in_array($user, $GLOBALS['said']['editors'], true); }

require $argv[1];
foreach ($hooked as $then) {
    $then();
}
$seen['markup'] = array_map($seen['shortcodes']['saddlerule'], $said['given']);
$seen['shortcodes'] = array_keys($seen['shortcodes']);
$seen['same'] = $seen['blocks']['saddlerule/fit']['render_callback'] === 'saddlerule_markup';
echo json_encode($seen, JSON_UNESCAPED_SLASHES | JSON_UNESCAPED_UNICODE);
