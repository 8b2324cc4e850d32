//! The server as a hostile, slow or clumsy client meets it: bytes sent over TCP to one that runs.

use super::*;
use std::io::{Read, Write};
use std::net::{Shutdown, TcpStream};
use std::sync::atomic::{AtomicUsize, Ordering};

/// What lies beside the folder, and is never served.
const SECRET: &str = "secret beside the folder";
const STYLE: &str = "p { color: teal }";
/// Far longer than any answer takes, so that a test that waits in vain ends.
const PATIENCE: Duration = Duration::from_secs(60);

/// A folder with a page, and around it what must stay there; all of it is removed afterwards.
struct Place(PathBuf);

impl Place {
    fn new() -> Self {
        static PLACES: AtomicUsize = AtomicUsize::new(0);
        let number = PLACES.fetch_add(1, Ordering::Relaxed);
        let around =
            std::env::temp_dir().join(format!("fasterby-serve-{}-{number}", std::process::id()));
        let site = around.join("site");
        for (path, content) in [
            ("secret.txt", SECRET.to_string()),
            ("site-too/secret.txt", SECRET.to_string()),
            ("site/index.html", "<p>the page</p>".into()),
            ("site/embed.js", "embed()".into()),
            ("site/embed/v1.js", "embed()".into()),
            ("site/embed/frame.html", "<p>the frame</p>".into()),
            ("site/frame-height.js", "height()".into()),
            ("site/version.json", "{}".into()),
            ("site/offline.js", "offline()".into()),
            ("site/start.js", "start()".into()),
            ("site/fasterby.html", "<p>one file</p>".into()),
            ("site/manifest.webmanifest", "{}".into()),
            ("site/icon.svg", "<svg/>".into()),
            ("site/a b%c.txt", "odd name".into()),
            ("site/v-1f/app.js", "answer()".into()),
            ("site/v-1f/style.css", STYLE.into()),
            ("site/v-1f/wasm/first_bg.wasm", "\0asm".into()),
            ("site/large.txt", "metres per second, ".repeat(100_000)),
        ] {
            let path = around.join(path);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, content).unwrap();
        }
        #[cfg(unix)]
        {
            use std::os::unix::fs::symlink;
            symlink("../secret.txt", site.join("link.txt")).unwrap();
            symlink("..", site.join("up")).unwrap();
            symlink("/dev/zero", site.join("zero")).unwrap();
            symlink("index.html", site.join("inner-link.html")).unwrap();
            let pipe = std::process::Command::new("mkfifo")
                .arg(site.join("pipe"))
                .status();
            assert!(pipe.is_ok_and(|status| status.success()));
        }
        Self(around)
    }

    fn served(&self) -> u16 {
        self.served_within(LIMITS)
    }

    fn served_within(&self, limits: Limits) -> u16 {
        let server = Server::bind_with(self.0.join("site"), 0, limits).unwrap();
        let port = server.listener.local_addr().unwrap().port();
        server.run_aside();
        port
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        fs::remove_dir_all(&self.0).ok();
    }
}

fn connected(port: u16) -> TcpStream {
    let stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
    stream.set_read_timeout(Some(PATIENCE)).unwrap();
    stream.set_write_timeout(Some(PATIENCE)).unwrap();
    stream
}

/// What comes back until the server closes. One that closes early may refuse the rest of a request.
fn said_to(port: u16, bytes: &[u8]) -> Vec<u8> {
    let mut stream = connected(port);
    stream.write_all(bytes).ok();
    stream.shutdown(Shutdown::Write).ok();
    until_closed(&mut stream)
}

fn until_closed(stream: &mut TcpStream) -> Vec<u8> {
    let mut all = Vec::new();
    let mut piece = [0; 4096];
    loop {
        match stream.read(&mut piece) {
            Ok(0) => return all,
            Ok(count) => all.extend(&piece[..count]),
            Err(error)
                if [io::ErrorKind::WouldBlock, io::ErrorKind::TimedOut].contains(&error.kind()) =>
            {
                panic!("the server keeps a connection that it should close")
            }
            Err(_) => return all,
        }
    }
}

struct Said {
    status: u16,
    head: String,
    body: Vec<u8>,
}

impl Said {
    fn of(bytes: &[u8]) -> Self {
        let end = bytes
            .windows(4)
            .position(|four| four == b"\r\n\r\n")
            .expect("an answer has a head");
        let head = String::from_utf8_lossy(&bytes[..end]).to_ascii_lowercase();
        let status = head
            .split(' ')
            .nth(1)
            .and_then(|code| code.parse().ok())
            .expect("an answer has a status");
        Self {
            status,
            head,
            body: bytes[end + 4..].to_vec(),
        }
    }

    fn header(&self, name: &str) -> Option<&str> {
        self.head
            .lines()
            .find_map(|line| line.strip_prefix(name)?.strip_prefix(": "))
    }
}

fn asked(port: u16, path: &str) -> Said {
    asked_with(port, "GET", path, "")
}

fn asked_with(port: u16, method: &str, path: &str, headers: &str) -> Said {
    let request = format!(
        "{method} {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n{headers}\r\n"
    );
    Said::of(&said_to(port, request.as_bytes()))
}

/// The server still answers, and right.
fn expect_it_works(port: u16) {
    let page = asked(port, "/");
    assert_eq!(
        (page.status, page.body.as_slice()),
        (200, &b"<p>the page</p>"[..])
    );
}

/// Every way out of a folder that servers have fallen for, to files that exist.
fn ways_out() -> Vec<String> {
    let ups = [
        "..",
        "%2e%2e",
        "%2E%2e",
        ".%2e",
        "%2e.",
        "%252e%252e",
        "..%00",
        "..%20",
        "...",
        "..;",
        "%c0%ae%c0%ae",
        "%e0%80%ae%e0%80%ae",
        "%uff0e%uff0e",
        "..%09",
        "v-1f/../..",
        "embed/%2e%2e/%2e%2e",
    ];
    let slashes = [
        "/", "%2f", "%2F", "%5c", "\\", "//", "%252f", "%c0%af", "/./",
    ];
    let mut ways: Vec<String> = ups
        .iter()
        .flat_map(|up| {
            slashes
                .iter()
                .map(move |slash| format!("/{up}{slash}secret.txt"))
        })
        .collect();
    for target in ["etc/passwd", "dev/zero", "proc/self/environ"] {
        for slash in slashes {
            ways.push(format!("{slash}{target}"));
            ways.push(format!("/{slash}{}", target.replace('/', slash)));
        }
    }
    ways.extend(
        [
            "/link.txt",
            "/up/secret.txt",
            "/up/site/index.html",
            "/zero",
            "/pipe",
            "/inner-link.html",
            "/site-too/secret.txt",
            "/..%2fsite-too%2fsecret.txt",
            "/index.html%00.txt",
            "/index.html%00",
            "/%00",
            "/index.html/",
            "/index.html/..",
            "/index.html/../../secret.txt",
            "/embed",
            "/embed/",
            "/v-1f",
            "/v-1f/",
            "/.",
            "/./index.html",
            "//index.html",
            "/embed//v1.js",
            "/embed/./v1.js",
            "/embed/../index.html",
            "/embed\\v1.js",
            "/embed%5cv1.js",
            "/%",
            "/%2",
            "/%zz",
            "/%e9",
            "/%ff%fe",
            "/INDEX.HTML",
            "/index.html.",
            "/index.html%20",
            "/index.html::$DATA",
            "/C:/secret.txt",
            "/C%3a%5csecret.txt",
            "/~/secret.txt",
            "/file:///etc/passwd",
            "/file:%2f%2f%2fetc%2fpasswd",
            "/CON",
            "/*",
        ]
        .map(String::from),
    );
    ways
}

#[test]
fn no_path_leads_out_of_the_folder_nor_to_a_link_or_a_device() {
    let place = Place::new();
    let port = place.served();
    let ways = ways_out();
    assert!(ways.len() >= 100);
    for way in &ways {
        for target in [
            way.clone(),
            format!("{way}?a=b"),
            format!("http://localhost{way}"),
        ] {
            let answer = said_to(
                port,
                format!("GET {target} HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n").as_bytes(),
            );
            let said = Said::of(&answer);
            assert!([400, 404].contains(&said.status), "{target}: {}", said.head);
            let text = String::from_utf8_lossy(&answer);
            assert!(
                !text.contains(SECRET) && !text.contains("root:") && !text.contains("the page"),
                "{target}: {text}"
            );
        }
    }
    expect_it_works(port);
}

/// Requests as bytes, each wrong in another way.
fn broken_requests() -> Vec<Vec<u8>> {
    let mut requests: Vec<Vec<u8>> = [
        "\r\n", "\r\n\r\n", "GET\r\n\r\n", "GET /\r\n\r\n", "GET / HTTP/9.9\r\n\r\n", "GET  /  HTTP/1.1\r\n\r\n",
        " GET / HTTP/1.1\r\n\r\n", "GET / HTTP/1.1\r\nHost\r\n\r\n", "GET / HTTP/1.1\r\n: a\r\n\r\n",
        "GET / HTTP/1.1\r\nHost : a\r\n\r\n", "GET / HTTP/1.1\r\nA: b\r\n c\r\n\r\n", "GET / HTTP/1.1\r\nA: \0\r\n\r\n",
        "GET /\0 HTTP/1.1\r\n\r\n", "GET /index.html", "GET secret.txt HTTP/1.1\r\n\r\n", "GET ../secret.txt HTTP/1.1\r\n\r\n",
        "GET * HTTP/1.1\r\n\r\n", "OPTIONS * HTTP/1.1\r\n\r\n", "CONNECT localhost:80 HTTP/1.1\r\n\r\n",
        "GET http:///secret.txt HTTP/1.1\r\n\r\n", "GET file:///etc/passwd HTTP/1.1\r\n\r\n",
        "TRACE / HTTP/1.1\r\n\r\n", "DELETE /index.html HTTP/1.1\r\n\r\n", "PUT /a HTTP/1.1\r\nContent-Length: 3\r\n\r\nabc",
        "POST / HTTP/1.1\r\nContent-Length: 99999999999999\r\n\r\nabc", "POST / HTTP/1.1\r\nContent-Length: -1\r\n\r\n",
        "POST / HTTP/1.1\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab",
        "POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\nffffffffffffffffff\r\n",
        "POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\nContent-Length: 4\r\n\r\n0\r\n\r\nGET /secret HTTP/1.1\r\n\r\n",
        "POST / HTTP/1.1\r\nExpect: 100-continue\r\nContent-Length: 5\r\n\r\n",
        "GET / HTTP/1.1\r\nUpgrade: h2c\r\nConnection: Upgrade\r\n\r\n", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
        "GET / HTTP/1.1\r\nRange: bytes=0-18446744073709551615\r\n\r\n",
    ]
    .map(|request| request.as_bytes().to_vec())
    .to_vec();
    requests.push(vec![0; 5000]);
    requests.push(vec![0xff; 5000]);
    requests.push(vec![b'\n'; 100_000]);
    requests.push((0..=255).cycle().take(5000).collect());
    // The beginning of a greeting for TLS.
    requests.push(
        [
            &[
                0x16, 0x03, 0x01, 0x02, 0x00, 0x01, 0x00, 0x01, 0xfc, 0x03, 0x03,
            ][..],
            &[7; 300],
        ]
        .concat(),
    );
    requests
}

#[test]
fn a_broken_request_ends_its_own_connection_and_nothing_else() {
    let place = Place::new();
    let port = place.served();
    for request in broken_requests() {
        let answer = said_to(port, &request);
        let shown = String::from_utf8_lossy(&request[..request.len().min(60)]).into_owned();
        let text = String::from_utf8_lossy(&answer);
        assert!(
            !text.contains(SECRET) && !text.contains("root:"),
            "{shown:?}: {text}"
        );
        expect_it_works(port);
    }
}

#[test]
fn only_reading_is_allowed() {
    let place = Place::new();
    let port = place.served();
    for method in ["POST", "PUT", "DELETE", "OPTIONS", "PATCH", "ANYTHING"] {
        let said = asked_with(port, method, "/", "");
        assert_eq!(
            (said.status, said.header("allow")),
            (405, Some("get, head")),
            "{method}"
        );
    }
}

#[test]
fn a_header_that_is_too_long_is_refused() {
    let place = Place::new();
    let port = place.served();
    let long = "a".repeat(1_000_000);
    let many = "A: b\r\n".repeat(10_000);
    for request in [
        format!("GET /{long} HTTP/1.1\r\n\r\n"),
        format!("GET / HTTP/1.1\r\nA: {long}\r\n\r\n"),
        format!("GET / HTTP/1.1\r\n{long}: a\r\n\r\n"),
        format!("GET / HTTP/1.1\r\n{many}\r\n"),
        long.clone(),
    ] {
        let answer = said_to(port, request.as_bytes());
        // The answer is lost where the connection is closed while the client still writes.
        if !answer.is_empty() {
            assert!(
                [400, 414, 431].contains(&Said::of(&answer).status),
                "{}",
                String::from_utf8_lossy(&answer)
            );
        }
        expect_it_works(port);
    }
}

#[test]
fn a_client_that_never_ends_its_header_or_says_nothing_is_let_go() {
    let place = Place::new();
    let port = place.served_within(Limits {
        header: Duration::from_millis(300),
        ..LIMITS
    });
    let mut silent = connected(port);
    let mut slow = connected(port);
    slow.write_all(b"GET / HTTP/1.1\r\nHost: a\r\nA: ").unwrap();
    let mut idle = connected(port);
    idle.write_all(b"GET / HTTP/1.1\r\nHost: a\r\n\r\n")
        .unwrap();
    let dripping = thread::spawn(move || {
        let mut stream = connected(port);
        stream.write_all(b"GET / HTTP/1.1\r\n").ok();
        // A byte now and then does not begin its time anew.
        while stream.write_all(b"a").is_ok() {
            thread::sleep(Duration::from_millis(50));
        }
    });
    expect_it_works(port);
    until_closed(&mut silent);
    until_closed(&mut slow);
    assert_eq!(Said::of(&until_closed(&mut idle)).status, 200);
    dripping.join().unwrap();
    expect_it_works(port);
}

#[test]
fn a_client_that_does_not_read_is_let_go() {
    let place = Place::new();
    let short = Duration::from_millis(300);
    let port = place.served_within(Limits {
        connection: short,
        closing: short,
        connections: 1,
        ..LIMITS
    });
    let mut stream = connected(port);
    for _ in 0..50 {
        stream
            .write_all(b"GET /large.txt HTTP/1.1\r\nHost: a\r\n\r\n")
            .ok();
    }
    // The only place is free again once that connection is closed.
    expect_it_works(port);
}

#[test]
fn two_hundred_connections_at_once_are_answered() {
    let place = Place::new();
    let port = place.served();
    let mut streams: Vec<TcpStream> = (0..200).map(|_| connected(port)).collect();
    for stream in &mut streams {
        stream
            .write_all(b"GET /large.txt HTTP/1.1\r\nHost: a\r\nAccept-Encoding: br\r\nConnection: close\r\n\r\n")
            .unwrap();
    }
    let bodies: Vec<Vec<u8>> = streams
        .iter_mut()
        .map(|stream| Said::of(&until_closed(stream)).body)
        .collect();
    assert!(!bodies[0].is_empty() && bodies.iter().all(|body| *body == bodies[0]));
}

#[test]
fn more_connections_than_there_are_places_wait_for_theirs() {
    let place = Place::new();
    let port = place.served_within(Limits {
        connections: 2,
        header: Duration::from_millis(300),
        ..LIMITS
    });
    let held: Vec<TcpStream> = (0..10).map(|_| connected(port)).collect();
    expect_it_works(port);
    drop(held);
}

#[test]
fn a_client_that_asks_for_it_is_left_and_another_is_kept() {
    let place = Place::new();
    let port = place.served();
    let mut stream = connected(port);
    stream
        .write_all(b"GET / HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")
        .unwrap();
    let said = Said::of(&until_closed(&mut stream));
    assert_eq!(
        (said.status, said.header("connection")),
        (200, Some("close"))
    );

    let mut stream = connected(port);
    stream.write_all(b"GET / HTTP/1.0\r\n\r\n").unwrap();
    assert_eq!(Said::of(&until_closed(&mut stream)).status, 200);

    // Two after another on one connection, the second the last.
    let mut stream = connected(port);
    let two = b"GET / HTTP/1.1\r\nHost: a\r\n\r\nGET /icon.svg HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n";
    stream.write_all(two).unwrap();
    let answers = until_closed(&mut stream);
    assert_eq!(
        String::from_utf8_lossy(&answers)
            .matches("HTTP/1.1 200")
            .count(),
        2
    );
}

#[test]
fn a_head_alone_is_that_of_the_whole_answer() {
    let place = Place::new();
    let port = place.served();
    for path in ["/", "/v-1f/style.css", "/missing"] {
        let (whole, head) = (asked(port, path), asked_with(port, "HEAD", path, ""));
        assert_eq!((head.status, head.body.len()), (whole.status, 0));
        assert_eq!(
            head.header("content-length"),
            Some(whole.body.len().to_string().as_str()),
            "{path}"
        );
        assert_eq!(head.header("content-type"), whole.header("content-type"));
    }
}

#[test]
fn a_body_is_compressed_as_the_client_prefers() {
    let place = Place::new();
    let port = place.served();
    for (accepted, wanted) in [
        ("gzip, deflate, br;q=0.9", Some("gzip")),
        ("gzip, deflate, br", Some("br")),
        ("GZIP", Some("gzip")),
        ("gzip;q=0", None),
        ("br;q=0, gzip", Some("gzip")),
        ("br;q=0,gzip;q=0", None),
        ("br;q=0.000, gzip;q=0.5", Some("gzip")),
        ("br ; q=0.5 , gzip ; q=0.6", Some("gzip")),
        ("*", Some("br")),
        ("*;q=0", None),
        ("br;q=0, *;q=0.5", Some("gzip")),
        ("identity;q=1, br;q=0.5", None),
        ("deflate", None),
        ("br;q=one", None),
        ("x-br, brotli", None),
        ("", None),
    ] {
        let said = asked_with(
            port,
            "GET",
            "/large.txt",
            &format!("Accept-Encoding: {accepted}\r\n"),
        );
        assert_eq!(
            (said.status, said.header("content-encoding")),
            (200, wanted),
            "{accepted}"
        );
        assert_eq!(said.header("vary"), Some("accept-encoding"));
    }
    assert_eq!(asked(port, "/large.txt").header("content-encoding"), None);
    let said = asked_with(
        port,
        "GET",
        "/large.txt",
        "Accept-Encoding: br;q=0\r\nAccept-Encoding: gzip\r\n",
    );
    assert_eq!(said.header("content-encoding"), Some("gzip"));
}

#[test]
fn other_origins_may_read_what_an_embed_needs_and_nothing_else() {
    let place = Place::new();
    let port = place.served();
    for path in [
        "/embed.js",
        "/embed/v1.js",
        "/frame-height.js",
        "/version.json",
        "/v-1f/app.js",
        "/v-1f/style.css",
        "/v-1f/wasm/first_bg.wasm",
    ] {
        let said = asked(port, path);
        assert_eq!(
            (said.status, said.header("access-control-allow-origin")),
            (200, Some("*")),
            "{path}"
        );
        assert_eq!(
            said.header("cross-origin-resource-policy"),
            Some("cross-origin"),
            "{path}"
        );
    }
    for path in [
        "/",
        "/index.html",
        "/offline.js",
        "/start.js",
        "/fasterby.html",
        "/manifest.webmanifest",
        "/icon.svg",
        "/embed/frame.html",
        "/large.txt",
        "/missing",
    ] {
        assert_eq!(
            asked(port, path).header("access-control-allow-origin"),
            None,
            "{path}"
        );
    }
    assert_eq!(
        asked(port, "/embed/frame.html").header("cross-origin-resource-policy"),
        Some("cross-origin")
    );
    assert_eq!(
        asked(port, "/").header("cross-origin-resource-policy"),
        Some("same-origin")
    );
}

#[test]
fn what_never_changes_is_kept_by_browsers_and_nothing_else() {
    let place = Place::new();
    let port = place.served();
    assert_eq!(
        asked(port, "/v-1f/app.js").header("cache-control"),
        Some("public, max-age=31536000, immutable")
    );
    for path in [
        "/",
        "/embed/v1.js",
        "/embed.js",
        "/offline.js",
        "/version.json",
        "/start.js",
        "/icon.svg",
    ] {
        assert_eq!(
            asked(port, path).header("cache-control"),
            Some("no-cache"),
            "{path}"
        );
    }
    assert_eq!(
        asked(port, "/v-1f/missing.js").header("cache-control"),
        Some("no-store")
    );
}

#[test]
fn a_name_with_odd_signs_is_found_by_its_encoding_and_a_query_is_ignored() {
    let place = Place::new();
    let port = place.served();
    assert_eq!(asked(port, "/a%20b%25c.txt").body, b"odd name");
    assert_eq!(
        asked(port, "/%69ndex.html?a=../../secret.txt").body,
        b"<p>the page</p>"
    );
    assert_eq!(asked(port, "/?a").body, b"<p>the page</p>");
}

#[test]
fn a_file_that_is_changed_is_served_anew_and_one_that_is_removed_is_not_found() {
    let place = Place::new();
    let port = place.served();
    let style = place.0.join("site/v-1f/style.css");
    assert_eq!(asked(port, "/v-1f/style.css").body, STYLE.as_bytes());
    fs::write(&style, "p { color: brown; margin: 0 }").unwrap();
    assert_eq!(
        asked(port, "/v-1f/style.css").body,
        b"p { color: brown; margin: 0 }"
    );
    fs::remove_file(&style).unwrap();
    assert_eq!(asked(port, "/v-1f/style.css").status, 404);
}

#[test]
fn scripts_styles_and_the_module_have_types_that_browsers_accept() {
    assert_eq!(mime("app.js"), "text/javascript; charset=utf-8");
    assert_eq!(mime("style.css"), "text/css; charset=utf-8");
    assert_eq!(mime("wasm/first_bg.wasm"), "application/wasm");
    assert_eq!(mime("manifest.webmanifest"), "application/manifest+json");
    assert_eq!(mime("unknown"), "application/octet-stream");
}
