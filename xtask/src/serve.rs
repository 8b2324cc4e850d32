//! A small server for the built page, on this machine only: hyper speaks HTTP, this file says what is served.
//!
//! Nothing of a request reaches the file system. The folder is listed for each request, and the path asked for either is the
//! name of a regular file in that list or is not found; links and devices are never listed.

use crate::command::Outcome;
use crate::{build, compress};
use http_body_util::Full;
use hyper::body::{Bytes, Incoming};
use hyper::header::{self, HeaderMap, HeaderName, HeaderValue};
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper::{Method, Request, Response, StatusCode};
use hyper_util::rt::{TokioIo, TokioTimer};
use std::collections::{BTreeMap, HashMap};
use std::convert::Infallible;
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::pin::pin;
use std::sync::{Arc, Mutex, MutexGuard};
use std::time::{Duration, SystemTime};
use std::{fs, io, thread};
use tokio::net::TcpStream;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

/// How much one client may take of the server.
#[derive(Clone, Copy)]
struct Limits {
    /// Connections that are open at once; further ones wait until one is closed.
    connections: usize,
    /// For a request's header to arrive whole, counted from the end of the answer before it.
    header: Duration,
    /// Then a connection is closed after the answer that is being sent.
    connection: Duration,
    /// For that last answer.
    closing: Duration,
}

/// A browser keeps six connections to a host, and leaves one unused for less than the time of a header here.
const LIMITS: Limits = Limits {
    connections: 256,
    header: Duration::from_secs(15),
    connection: Duration::from_secs(300),
    closing: Duration::from_secs(15),
};
/// No browser's request for this page comes near these.
const LONGEST_HEADER_BYTES: usize = 16 << 10;
const MOST_HEADER_LINES: usize = 100;
/// Reading and compressing files.
const FILE_THREADS: usize = 4;
/// After an error such as too many open files.
const PAUSE: Duration = Duration::from_millis(50);

/// A folder, served on this machine only.
pub struct Server {
    folder: Arc<Folder>,
    listener: TcpListener,
    limits: Limits,
}

impl Server {
    /// Takes the port; 0 takes any free one.
    pub fn bind(folder: PathBuf, port: u16) -> Outcome<Self> {
        Self::bind_with(folder, port, LIMITS)
    }

    fn bind_with(folder: PathBuf, port: u16, limits: Limits) -> Outcome<Self> {
        let listener = TcpListener::bind(("127.0.0.1", port))
            .and_then(|listener| listener.set_nonblocking(true).map(|()| listener))
            .map_err(|error| {
                format!("Port {port} cannot be used ({error}): choose another with `--port N`.")
            })?;
        Ok(Self {
            folder: Arc::new(Folder::new(folder)),
            listener,
            limits,
        })
    }

    /// The address to open.
    pub fn address(&self) -> String {
        let port = self
            .listener
            .local_addr()
            .map_or(0, |address| address.port());
        format!("http://localhost:{port}/")
    }

    /// Serves until the program ends.
    pub fn run(self) -> Outcome {
        tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .max_blocking_threads(FILE_THREADS)
            .build()
            .and_then(|runtime| runtime.block_on(self.accept()))
            .map_err(|error| format!("The server could not be started: {error}."))
    }

    /// Serves beside whatever else this program does.
    pub fn run_aside(self) {
        thread::spawn(move || self.run());
    }

    async fn accept(self) -> io::Result<()> {
        let listener = tokio::net::TcpListener::from_std(self.listener)?;
        let free = Arc::new(Semaphore::new(self.limits.connections));
        // The semaphore is never closed.
        while let Ok(permit) = Arc::clone(&free).acquire_owned().await {
            match listener.accept().await {
                Ok((stream, _)) => {
                    tokio::spawn(converse(
                        Arc::clone(&self.folder),
                        stream,
                        self.limits,
                        permit,
                    ));
                }
                Err(_) => tokio::time::sleep(PAUSE).await,
            }
        }
        Ok(())
    }
}

/// Answers the requests of one connection, one after the other. A visitor who goes away in the middle is no error.
async fn converse(
    folder: Arc<Folder>,
    stream: TcpStream,
    limits: Limits,
    _permit: OwnedSemaphorePermit,
) {
    stream.set_nodelay(true).ok();
    let answer = service_fn(move |request: Request<Incoming>| answer(Arc::clone(&folder), request));
    let mut connection = pin!(
        http1::Builder::new()
            .timer(TokioTimer::new())
            .header_read_timeout(limits.header)
            // A client that has sent all it wants still reads.
            .half_close(true)
            .max_buf_size(LONGEST_HEADER_BYTES)
            .max_headers(MOST_HEADER_LINES)
            .serve_connection(TokioIo::new(stream), answer)
    );
    if tokio::time::timeout(limits.connection, connection.as_mut())
        .await
        .is_err()
    {
        connection.as_mut().graceful_shutdown();
        tokio::time::timeout(limits.closing, connection).await.ok();
    }
}

async fn answer(
    folder: Arc<Folder>,
    request: Request<Incoming>,
) -> Result<Response<Full<Bytes>>, Infallible> {
    if ![Method::GET, Method::HEAD].contains(request.method()) {
        let mut refused = failed(StatusCode::METHOD_NOT_ALLOWED);
        refused
            .headers_mut()
            .insert(header::ALLOW, HeaderValue::from_static("GET, HEAD"));
        return Ok(refused);
    }
    let Some(name) = name_of(request.uri().path()) else {
        return Ok(failed(StatusCode::NOT_FOUND));
    };
    let encoding = Encoding::wanted(request.headers());
    let found = tokio::task::spawn_blocking(move || {
        folder
            .find(&name, encoding)
            .map(|body| found(&name, encoding, body))
    });
    Ok(found
        .await
        .ok()
        .flatten()
        .unwrap_or_else(|| failed(StatusCode::NOT_FOUND)))
}

/// The file that the path of a request names: percent signs decoded once, a folder meaning its index.
fn name_of(path: &str) -> Option<String> {
    let name = String::from_utf8(percent_decoded(path.strip_prefix('/')?)?).ok()?;
    Some(if name.is_empty() || name.ends_with('/') {
        name + "index.html"
    } else {
        name
    })
}

fn percent_decoded(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let [first, others @ ..] = rest {
        if *first == b'%' {
            let digits = others
                .get(..2)
                .filter(|digits| digits.iter().all(u8::is_ascii_hexdigit))?;
            bytes.push(u8::from_str_radix(std::str::from_utf8(digits).ok()?, 16).ok()?);
            rest = &others[2..];
        } else {
            bytes.push(*first);
            rest = others;
        }
    }
    Some(bytes)
}

/// How a body is compressed on its way.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
enum Encoding {
    Brotli,
    Gzip,
    Plain,
}

impl Encoding {
    fn name(self) -> &'static str {
        match self {
            Self::Brotli => "br",
            Self::Gzip => "gzip",
            Self::Plain => "identity",
        }
    }

    /// The one that a client prefers (RFC 9110, section 12.5.3), the denser of two that it likes as well.
    fn wanted(headers: &HeaderMap) -> Self {
        let lines: Vec<&str> = headers
            .get_all(header::ACCEPT_ENCODING)
            .iter()
            .filter_map(|value| value.to_str().ok())
            .collect();
        let accepted = lines.join(",").to_ascii_lowercase();
        let plain = Self::Plain.quality(&accepted).unwrap_or(0.0);
        let taken = |one: &Self| {
            one.quality(&accepted)
                .filter(|&quality| quality > 0.0 && quality >= plain)
        };
        let likes_gzip = taken(&Self::Gzip);
        match (taken(&Self::Brotli), likes_gzip) {
            (Some(brotli), gzip) if gzip.is_none_or(|gzip| brotli >= gzip) => Self::Brotli,
            (_, Some(_)) => Self::Gzip,
            _ => Self::Plain,
        }
    }

    /// What a client thinks of it, if it says so.
    fn quality(self, accepted: &str) -> Option<f32> {
        let weighed = accepted.split(',').map(|one| {
            let (name, parameters) = one.split_once(';').unwrap_or((one, ""));
            let weight = parameters
                .split(';')
                .find_map(|parameter| parameter.trim().strip_prefix("q="));
            // A weight that is none counts as not wanted.
            (
                name.trim(),
                weight.map_or(1.0, |weight| weight.trim().parse().unwrap_or(0.0)),
            )
        });
        let of = |wanted: &str| {
            weighed
                .clone()
                .find(|(name, _)| *name == wanted)
                .map(|(_, weight)| weight)
        };
        of(self.name()).or_else(|| of("*"))
    }

    fn compress(self, content: Vec<u8>) -> Vec<u8> {
        match self {
            Self::Brotli => compress::brotli(&content),
            Self::Gzip => compress::gzip(&content),
            Self::Plain => content,
        }
    }
}

/// A file as it was when it was read.
struct Packed {
    size_bytes: u64,
    modified: Option<SystemTime>,
    body: Bytes,
}

type Shelf = HashMap<(String, Encoding), Arc<Mutex<Option<Packed>>>>;

/// What is served, read and compressed once as hosts of static files do, and again where a file has changed.
struct Folder {
    path: PathBuf,
    shelf: Mutex<Shelf>,
}

impl Folder {
    fn new(path: PathBuf) -> Self {
        Self {
            path,
            shelf: Mutex::default(),
        }
    }

    /// The content of a regular file of this folder.
    fn find(&self, name: &str, encoding: Encoding) -> Option<Bytes> {
        let files = regular_files(&self.path);
        let path = files.get(name)?;
        let place = {
            let mut shelf = unbroken(&self.shelf);
            shelf.retain(|(kept, _), _| files.contains_key(kept));
            Arc::clone(shelf.entry((name.to_string(), encoding)).or_default())
        };
        // Whoever asks for the same meanwhile waits for it here.
        let mut packed = unbroken(&place);
        let about = fs::symlink_metadata(path)
            .ok()
            .filter(fs::Metadata::is_file)?;
        let (size_bytes, modified) = (about.len(), about.modified().ok());
        let fresh = packed
            .as_ref()
            .filter(|kept| kept.size_bytes == size_bytes && kept.modified == modified);
        if let Some(kept) = fresh {
            return Some(kept.body.clone());
        }
        let body = Bytes::from(encoding.compress(fs::read(path).ok()?));
        *packed = Some(Packed {
            size_bytes,
            modified,
            body: body.clone(),
        });
        Some(body)
    }
}

/// Whoever broke off left what was kept as it was.
fn unbroken<T>(lock: &Mutex<T>) -> MutexGuard<'_, T> {
    lock.lock().unwrap_or_else(|broken| broken.into_inner())
}

/// The regular files below a folder, by their path from there with `/` between names; links are not followed.
fn regular_files(folder: &Path) -> BTreeMap<String, PathBuf> {
    let mut files = BTreeMap::new();
    let mut ahead = vec![(String::new(), folder.to_path_buf())];
    while let Some((prefix, folder)) = ahead.pop() {
        for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
            let (Ok(kind), Ok(name)) = (entry.file_type(), entry.file_name().into_string()) else {
                continue;
            };
            if kind.is_dir() {
                ahead.push((format!("{prefix}{name}/"), entry.path()));
            } else if kind.is_file() {
                files.insert(format!("{prefix}{name}"), entry.path());
            }
        }
    }
    files
}

/// The media type by the file's extension.
fn mime(name: &str) -> &'static str {
    match name.rsplit_once('.').map_or("", |(_, extension)| extension) {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/x-icon",
        "webp" => "image/webp",
        "txt" | "ts" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// What an embedded question needs from another origin: the scripts that a host page names, and all of a version.
fn is_for_other_origins(name: &str) -> bool {
    build::OPEN_TO_OTHERS.contains(&name) || build::is_of_a_version(name)
}

fn failed(status: StatusCode) -> Response<Full<Bytes>> {
    let mut response = Response::new(Full::from(status.to_string()));
    *response.status_mut() = status;
    set(
        &mut response,
        &[
            (header::CONTENT_TYPE, "text/plain; charset=utf-8"),
            (header::CACHE_CONTROL, "no-store"),
        ],
    );
    response
}

fn found(name: &str, encoding: Encoding, body: Bytes) -> Response<Full<Bytes>> {
    let mut response = Response::new(Full::new(body));
    let caching = if build::is_of_a_version(name) {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    };
    set(
        &mut response,
        &[
            (header::CONTENT_TYPE, mime(name)),
            (header::CACHE_CONTROL, caching),
            (header::VARY, "Accept-Encoding"),
            // These two give the page an exact clock, which the measurements need.
            (
                HeaderName::from_static("cross-origin-opener-policy"),
                "same-origin",
            ),
            (
                HeaderName::from_static("cross-origin-embedder-policy"),
                "require-corp",
            ),
        ],
    );
    let is_open = is_for_other_origins(name);
    if is_open {
        set(&mut response, &[(header::ACCESS_CONTROL_ALLOW_ORIGIN, "*")]);
    }
    // A page that is isolated itself may still frame a question.
    let policy = if is_open || name == build::FRAME {
        "cross-origin"
    } else {
        "same-origin"
    };
    set(
        &mut response,
        &[(
            HeaderName::from_static("cross-origin-resource-policy"),
            policy,
        )],
    );
    if encoding != Encoding::Plain {
        set(
            &mut response,
            &[(header::CONTENT_ENCODING, encoding.name())],
        );
    }
    response
}

fn set(response: &mut Response<Full<Bytes>>, headers: &[(HeaderName, &'static str)]) {
    response.headers_mut().insert(
        header::X_CONTENT_TYPE_OPTIONS,
        HeaderValue::from_static("nosniff"),
    );
    for (name, value) in headers {
        response
            .headers_mut()
            .insert(name, HeaderValue::from_static(value));
    }
}

#[cfg(test)]
mod tests;
