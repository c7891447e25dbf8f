<?php
/**
 * Plugin Name: Saddlerule
 * Description: Which bike fits a growing child: a block, and [saddlerule list="bikes.csv"].
 * Version: 0
 * Requires at least: 6.1
 * Requires PHP: 7.4
 * License: Apache-2.0
 *
 * Puts <saddlerule-fit> into pages for authors who may not write scripts. It saves nothing, and nothing runs here for readers but
 * this: all else is plain files, in the folder element/.
 */

if (!defined('ABSPATH')) {
    exit;
}

const SADDLERULE_SETTINGS = ['list' => '', 'language' => '', 'units' => '', 'currency' => '', 'view' => ''];

/**
 * The newest upload of that name, to which the media library adds a number when it comes again (bikes-1.csv). Whoever may change a page
 * may change its list: the page's author, and editors.
 */
function saddlerule_upload(string $name): string
{
    $uploads = get_posts([
        'post_type' => 'attachment',
        'post_status' => 'inherit',
        'post_mime_type' => ['text', 'application'],
        'orderby' => 'ID',
        'numberposts' => 200,
    ]);
    ['filename' => $stem, 'extension' => $kind] = pathinfo(sanitize_file_name($name));
    $named = '/\/' . preg_quote($stem, '/') . '(-\d+)?\.' . preg_quote($kind, '/') . '$/';
    $writer = (int) get_post_field('post_author');
    foreach ($uploads as $upload) {
        $by = (int) $upload->post_author;
        $address = (string) wp_get_attachment_url($upload->ID);
        if (preg_match($named, $address) === 1 && ($by === $writer || user_can($by, 'edit_others_pages'))) {
            return $address;
        }
    }
    return '';
}

/** $list: an address, or the name of an upload; one that is not there is left as it is, for the element to say so. */
function saddlerule_list(string $list): string
{
    $isName = preg_match('/^[^\/?#:]+\.\w+$/', $list) === 1;
    $upload = $isName ? saddlerule_upload($list) : '';
    return $upload === '' ? $list : $upload;
}

/** @param array|string $given attributes of the shortcode or of the block */
function saddlerule_markup($given): string
{
    $settings = shortcode_atts(SADDLERULE_SETTINGS, $given, 'saddlerule');
    wp_enqueue_script('saddlerule-fit');
    $html = '<saddlerule-fit';
    foreach ($settings as $name => $value) {
        $text = trim((string) $value);
        if ($text === '') {
            continue;
        }
        $safe = $name === 'list' ? esc_url(saddlerule_list($text), ['http', 'https']) : esc_attr($text);
        $html .= " $name=\"$safe\"";
    }
    $without = 'To see which bike fits, this page needs JavaScript.';
    // For hosts that join scripts: the element finds its files all the same.
    $folder = esc_url(plugins_url('element', __FILE__));
    return "$html><p>$without</p></saddlerule-fit><script type=\"text/plain\" data-saddlerule=\"$folder\"></script>";
}

add_action('init', function (): void {
    $version = get_file_data(__FILE__, ['version' => 'Version'])['version'];
    wp_register_script('saddlerule-fit', plugins_url('element/saddlerule-fit.js', __FILE__), [], $version, true);
    $parts = ['wp-blocks', 'wp-block-editor', 'wp-components', 'wp-element'];
    wp_register_script('saddlerule-block', plugins_url('block.js', __FILE__), $parts, $version, true);
    register_block_type('saddlerule/fit', [
        'api_version' => 2,
        'attributes' => array_map(fn($default) => ['type' => 'string', 'default' => $default], SADDLERULE_SETTINGS),
        'editor_script' => 'saddlerule-block',
        'render_callback' => 'saddlerule_markup',
    ]);
    add_shortcode('saddlerule', 'saddlerule_markup');
});
