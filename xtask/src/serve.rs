//! A small server for the built page: files, types, compression, and nothing kept by the browser between builds.

use crate::command::Outcome;
use crate::compress;
use std::collections::HashMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{TcpListener, TcpStream};
use std::path::PathBuf;
use std::sync::{Arc, Mutex};
use std::time::Duration;
use std::{fs, io, thread};

/// Longer than a browser leaves a connection unused between two requests of one page.
const IDLE: Duration = Duration::from_secs(10);
/// No browser's request for this page comes near it.
const LONGEST_HEAD_BYTES: u64 = 64 << 10;

/// A folder, served on this machine only.
pub struct Server {
    folder: Arc<Folder>,
    listener: TcpListener,
}

impl Server {
    /// Takes the port; 0 takes any free one.
    pub fn bind(folder: PathBuf, port: u16) -> Outcome<Self> {
        let listener = TcpListener::bind(("127.0.0.1", port))
            .map_err(|error| format!("Port {port} cannot be used ({error}): choose another with `--port N`."))?;
        Ok(Self { folder: Arc::new(Folder::new(folder)), listener })
    }

    /// The address to open.
    pub fn address(&self) -> String {
        let port = self.listener.local_addr().map_or(0, |address| address.port());
        format!("http://localhost:{port}/")
    }

    /// Serves until the program ends.
    pub fn run(self) {
        for stream in self.listener.incoming().flatten() {
            let folder = Arc::clone(&self.folder);
            // A visitor who goes away in the middle is no error.
            thread::spawn(move || converse(&folder, stream).ok());
        }
    }

    /// Serves beside whatever else this program does.
    pub fn run_aside(self) {
        thread::spawn(move || self.run());
    }
}

/// Answers the requests of one connection, one after the other.
fn converse(folder: &Folder, stream: TcpStream) -> io::Result<()> {
    stream.set_read_timeout(Some(IDLE))?;
    stream.set_nodelay(true)?;
    let mut reader = BufReader::new(stream.try_clone()?);
    while let Some(request) = Request::read(&mut reader)? {
        write_answer(&stream, &folder.answer(&request), request.is_head)?;
    }
    Ok(())
}

struct Request {
    is_head: bool,
    is_read: bool,
    path: String,
    takes: Vec<Encoding>,
}

impl Request {
    fn read(reader: &mut impl BufRead) -> io::Result<Option<Self>> {
        let mut head = reader.take(LONGEST_HEAD_BYTES);
        let mut line = String::new();
        if head.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        let mut words = line.split_whitespace();
        let (method, target) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
        let mut request = Self {
            is_head: method == "HEAD",
            is_read: method == "GET" || method == "HEAD",
            path: path_of(target),
            takes: Vec::new(),
        };
        loop {
            let mut header = String::new();
            if head.read_line(&mut header)? == 0 || header.trim().is_empty() {
                return Ok(Some(request));
            }
            let header = header.to_ascii_lowercase();
            if let Some(value) = header.strip_prefix("accept-encoding:") {
                request.takes = Encoding::ALL.into_iter().filter(|encoding| encoding.is_named_in(value)).collect();
            }
        }
    }
}

/// The file that a request's target names: no query, percent signs decoded, a folder meaning its index.
fn path_of(target: &str) -> String {
    let path = target.split(['?', '#']).next().unwrap_or_default().trim_start_matches('/');
    let path = percent_decoded(path);
    if path.is_empty() || path.ends_with('/') { format!("{path}index.html") } else { path }
}

fn percent_decoded(text: &str) -> String {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let [first, others @ ..] = rest {
        let code = || u8::from_str_radix(std::str::from_utf8(others.get(..2)?).ok()?, 16).ok();
        let encoded = if *first == b'%' { code() } else { None };
        bytes.push(encoded.unwrap_or(*first));
        rest = if encoded.is_some() { &others[2..] } else { others };
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

/// How a body is compressed on its way.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
enum Encoding {
    Brotli,
    Gzip,
}

impl Encoding {
    /// The denser first.
    const ALL: [Self; 2] = [Self::Brotli, Self::Gzip];

    fn name(self) -> &'static str {
        match self {
            Self::Brotli => "br",
            Self::Gzip => "gzip",
        }
    }

    /// Whether a client that accepts these takes it.
    fn is_named_in(self, accepted: &str) -> bool {
        accepted.split(',').any(|one| one.split(';').next().unwrap_or_default().trim() == self.name())
    }

    fn compress(self, content: &[u8]) -> Vec<u8> {
        match self {
            Self::Brotli => compress::brotli(content),
            Self::Gzip => compress::gzip(content),
        }
    }
}

struct Answer {
    status: &'static str,
    mime: &'static str,
    encoding: Option<Encoding>,
    body: Arc<Vec<u8>>,
}

/// A file as it was when it was compressed.
struct Packed {
    content: Vec<u8>,
    body: Arc<Vec<u8>>,
}

/// What is served, with what was compressed of it: each file once, as hosts of static files do.
struct Folder {
    path: PathBuf,
    packed: Mutex<HashMap<(String, Encoding), Packed>>,
}

impl Folder {
    fn new(path: PathBuf) -> Self {
        Self { path, packed: Mutex::default() }
    }

    fn answer(&self, request: &Request) -> Answer {
        let failed = |status: &'static str| Answer {
            status,
            mime: "text/plain; charset=utf-8",
            encoding: None,
            body: Arc::new(status.as_bytes().to_vec()),
        };
        if !request.is_read {
            return failed("405 Method Not Allowed");
        }
        let stays_inside = request.path.split(['/', '\\']).all(|part| part != "..");
        let Some(content) = stays_inside.then(|| fs::read(self.path.join(&request.path)).ok()).flatten() else {
            return failed("404 Not Found");
        };
        let mime = mime(&request.path);
        let encoding = request.takes.first().copied().filter(|_| !mime.starts_with("image/png"));
        let body = match encoding {
            Some(encoding) => self.pack(&request.path, content, encoding),
            None => Arc::new(content),
        };
        Answer { status: "200 OK", mime, encoding, body }
    }

    fn pack(&self, path: &str, content: Vec<u8>, encoding: Encoding) -> Arc<Vec<u8>> {
        let key = (path.to_string(), encoding);
        // A conversation that broke off leaves what was packed before as it was.
        let kept = || self.packed.lock().unwrap_or_else(|broken| broken.into_inner());
        if let Some(before) = kept().get(&key).filter(|packed| packed.content == content) {
            return Arc::clone(&before.body);
        }
        let body = Arc::new(encoding.compress(&content));
        kept().insert(key, Packed { content, body: Arc::clone(&body) });
        body
    }
}

/// The media type by the file's extension.
fn mime(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, extension)| extension) {
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

fn write_answer(mut stream: &TcpStream, answer: &Answer, is_head: bool) -> io::Result<()> {
    let encoding =
        answer.encoding.map_or(String::new(), |encoding| format!("Content-Encoding: {}\r\n", encoding.name()));
    // The opener and embedder policies give the page an exact clock, which the measurements need;
    // the open origin lets a page elsewhere embed the calculator.
    let head = format!(
        "HTTP/1.1 {}\r\nContent-Type: {}\r\nContent-Length: {}\r\n{encoding}Cache-Control: no-cache\r\n\
         X-Content-Type-Options: nosniff\r\nAccess-Control-Allow-Origin: *\r\n\
         Cross-Origin-Opener-Policy: same-origin\r\nCross-Origin-Embedder-Policy: require-corp\r\n\
         Cross-Origin-Resource-Policy: cross-origin\r\n\r\n",
        answer.status,
        answer.mime,
        answer.body.len(),
    );
    stream.write_all(head.as_bytes())?;
    if !is_head {
        stream.write_all(&answer.body)?;
    }
    stream.flush()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn asked(path: &str) -> Answer {
        Folder::new(crate::paths::root().join("xtask")).answer(&request(path, &[]))
    }

    fn request(path: &str, takes: &[Encoding]) -> Request {
        Request { is_head: false, is_read: true, path: path_of(path), takes: takes.to_vec() }
    }

    #[test]
    fn the_densest_that_a_client_takes_is_sent_and_a_changed_file_is_packed_anew() {
        let read = |line: &str| Request::read(&mut line.as_bytes()).ok().flatten().map(|request| request.takes);
        assert_eq!(
            read("GET / HTTP/1.1\r\nAccept-Encoding: gzip, deflate, br;q=0.9\r\n\r\n"),
            Some(Encoding::ALL.to_vec())
        );
        assert_eq!(read("GET / HTTP/1.1\r\nAccept-Encoding: GZIP\r\n\r\n"), Some(vec![Encoding::Gzip]));
        assert_eq!(read("GET / HTTP/1.1\r\n\r\n"), Some(vec![]));

        let folder = Folder::new(crate::paths::root().join("xtask"));
        let answer = folder.answer(&request("/Cargo.toml", &Encoding::ALL));
        assert_eq!(answer.encoding, Some(Encoding::Brotli));
        let same = folder.answer(&request("/Cargo.toml", &Encoding::ALL));
        assert!(Arc::ptr_eq(&answer.body, &same.body));
        let changed = folder.pack("Cargo.toml", b"other".to_vec(), Encoding::Brotli);
        assert!(!Arc::ptr_eq(&answer.body, &changed));
    }

    #[test]
    fn scripts_styles_and_the_module_have_types_that_browsers_accept() {
        assert_eq!(mime("app.js"), "text/javascript; charset=utf-8");
        assert_eq!(mime("style.css"), "text/css; charset=utf-8");
        assert_eq!(mime("wasm/first_bg.wasm"), "application/wasm");
        assert_eq!(mime("manifest.webmanifest"), "application/manifest+json");
        assert_eq!(mime("unknown"), "application/octet-stream");
    }

    #[test]
    fn a_folder_means_its_index_and_a_query_is_ignored() {
        assert_eq!(path_of("/"), "index.html");
        assert_eq!(path_of("/learn/?a=b"), "learn/index.html");
        assert_eq!(path_of("/a%20file%2"), "a file%2");
        assert_eq!(path_of("/%é%f"), "%é%f");
    }

    #[test]
    fn nothing_outside_the_folder_is_served() {
        assert_eq!(asked("/Cargo.toml").status, "200 OK");
        assert_eq!(asked("/../Cargo.toml").status, "404 Not Found");
        assert_eq!(asked("/%2e%2e/Cargo.toml").status, "404 Not Found");
        assert_eq!(asked("//etc/hostname").status, "404 Not Found");
        assert_eq!(asked("/missing").status, "404 Not Found");
    }
}
