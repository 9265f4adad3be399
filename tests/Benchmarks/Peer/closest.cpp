// Closest points of a mesh by CGAL's tree of axis-aligned boxes: what our own tree is measured against.
// closest <mesh.stl> <points.bin> <distances.bin>: prints ms to read, ms to build, ns for a query, MB at most.
// The mesh is binary STL, points and distances are doubles; little-endian throughout.
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Simple_cartesian.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Point = Kernel::Point_3;
using Triangle = Kernel::Triangle_3;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, std::vector<Triangle>::iterator>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

constexpr std::size_t headLength = 84;
constexpr std::size_t triangleLength = 50;
constexpr std::size_t normalLength = 12;
constexpr int passes = 5;

double milliseconds() {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

std::vector<char> content(const char* name) {
    std::ifstream file(name, std::ios::binary | std::ios::ate);
    if (!file) throw std::runtime_error(std::string("no file ") + name);
    std::vector<char> bytes(static_cast<std::size_t>(file.tellg()));
    file.seekg(0);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

Point corner(const char* at) {
    float xyz[3];
    std::memcpy(xyz, at, sizeof xyz);
    return Point(xyz[0], xyz[1], xyz[2]);
}

std::vector<Triangle> readMesh(const char* name) {
    const std::vector<char> bytes = content(name);
    std::uint32_t count = 0;
    if (bytes.size() >= headLength) std::memcpy(&count, bytes.data() + 80, sizeof count);
    if (bytes.size() != headLength + triangleLength * count) throw std::runtime_error("not a binary STL");
    std::vector<Triangle> triangles;
    triangles.reserve(count);
    for (std::uint32_t i = 0; i < count; ++i) {
        const char* at = bytes.data() + headLength + triangleLength * i + normalLength;
        triangles.emplace_back(corner(at), corner(at + 12), corner(at + 24));
    }
    return triangles;
}

std::vector<Point> readPoints(const char* name) {
    const std::vector<char> bytes = content(name);
    std::vector<Point> points;
    for (std::size_t at = 0; at + 24 <= bytes.size(); at += 24) {
        double xyz[3];
        std::memcpy(xyz, bytes.data() + at, sizeof xyz);
        points.emplace_back(xyz[0], xyz[1], xyz[2]);
    }
    return points;
}

// Linux tells the most memory that a process held.
double peakMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;)
        if (word == "VmHWM:") {
            double kilobytes = 0;
            status >> kilobytes;
            return kilobytes / 1024;
        }
    return 0;
}

}  // namespace

int main(int argumentCount, char** arguments) try {
    if (argumentCount != 4) throw std::runtime_error("closest <mesh.stl> <points.bin> <distances.bin>");
    const std::vector<Point> points = readPoints(arguments[2]);
    const double start = milliseconds();
    std::vector<Triangle> triangles = readMesh(arguments[1]);
    const double read = milliseconds();
    Tree tree(triangles.begin(), triangles.end());
    tree.build();
    tree.accelerate_distance_queries();
    const double built = milliseconds();
    std::vector<double> distances(points.size());
    std::vector<double> times;
    for (int pass = 0; pass < passes; ++pass) {
        const double before = milliseconds();
        for (std::size_t i = 0; i < points.size(); ++i) distances[i] = std::sqrt(tree.squared_distance(points[i]));
        times.push_back(1e6 * (milliseconds() - before) / static_cast<double>(points.size()));
    }
    std::sort(times.begin(), times.end());
    std::ofstream out(arguments[3], std::ios::binary);
    out.write(reinterpret_cast<const char*>(distances.data()), static_cast<std::streamsize>(sizeof(double) * distances.size()));
    std::printf("%.17g %.17g %.17g %.17g\n", read - start, built - read, times[passes / 2], peakMegabytes());
    return out ? 0 : 1;
} catch (const std::exception& fault) {
    std::fprintf(stderr, "%s\n", fault.what());
    return 1;
}
