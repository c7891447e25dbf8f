// The engine as five plain C functions, and two of the host's: the only way in and out of the wasm module. Whoever calls them
// owns nothing; the three buffers (request, file, answer) live inside the engine and are reused from call to call.
#pragma once

#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

/// Room for a request of `length` bytes of UTF-8 JSON. Valid until the next call of any function here.
char* saddlerule_request_buffer(size_t length);

/// Room for a catalogue file of `length` bytes, to go with the next request. Valid until saddlerule_ask returns.
char* saddlerule_file_buffer(size_t length);

/// Answers the request that is in the buffers. The file buffer is emptied; the answer stays until the next ask.
void saddlerule_ask(void);

/// What the module asks of its host: to be told how many bytes of a file are read while saddlerule_ask reads one. The
/// host must not call any function here meanwhile.
#ifdef __wasm__
__attribute__((import_module("env"), import_name("saddlerule_progress")))
#endif
void saddlerule_progress(size_t done, size_t total);

/// And whether a plan may go on, that many milliseconds being allowed since saddlerule_ask began: the engine has no clock.
/// 0: give the best so far.
#ifdef __wasm__
__attribute__((import_module("env"), import_name("saddlerule_may_go_on")))
#endif
int saddlerule_may_go_on(double limit_ms);

/// The answer's UTF-8 JSON, without a terminating zero.
const char* saddlerule_answer(void);
size_t saddlerule_answer_length(void);

#ifdef __cplusplus
}
#endif
